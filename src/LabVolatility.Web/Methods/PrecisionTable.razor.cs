using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.People;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Methods;

/// <summary>Precision entries of a method with their state and the acts on them.</summary>
public sealed partial class PrecisionTable : ComponentBase
{
    [Parameter, EditorRequired]
    public TestMethod Method { get; set; } = null!;

    [Parameter, EditorRequired]
    public IReadOnlyList<PrecisionLine> Lines { get; set; } = [];

    [Parameter, EditorRequired]
    public Actor Actor { get; set; } = null!;

    [Parameter]
    public string Caption { get; set; } = "";

    [Parameter]
    public EventCallback<PrecisionLine> Approve { get; set; }

    [Parameter]
    public EventCallback<PrecisionLine> Withdraw { get; set; }
}
