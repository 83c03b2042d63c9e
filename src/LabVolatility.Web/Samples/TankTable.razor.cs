using LabVolatility.Laboratory.Samples;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Samples;

/// <summary>Tanks, a line each.</summary>
public sealed partial class TankTable : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<TankSheet> Tanks { get; set; } = [];
}
