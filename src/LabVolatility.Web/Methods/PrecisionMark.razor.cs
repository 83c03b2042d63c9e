using LabVolatility.Laboratory.Methods;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Methods;

/// <summary>Draft, approved by whom, or withdrawn.</summary>
public sealed partial class PrecisionMark : ComponentBase
{
    [Parameter, EditorRequired]
    public PrecisionLine Line { get; set; } = null!;

    [Inject]
    private LabClock Clock { get; set; } = null!;
}
