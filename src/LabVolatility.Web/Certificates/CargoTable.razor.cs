using LabVolatility.Laboratory.Certificates;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Certificates;

/// <summary>Cargo certificates as lines.</summary>
public sealed partial class CargoTable : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<CargoLine> Lines { get; set; } = [];
}
