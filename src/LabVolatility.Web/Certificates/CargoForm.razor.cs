using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Certificates;

/// <summary>The fields of a cargo certificate, apart from its tanks.</summary>
public sealed partial class CargoForm : ComponentBase
{
    [Parameter, EditorRequired]
    public CargoEntry Entry { get; set; } = null!;

    [Parameter]
    public IReadOnlyList<Problem> Problems { get; set; } = [];
}
