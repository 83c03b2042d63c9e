using LabVolatility.Laboratory.Certificates.Documents;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Certificates;

/// <summary>The shore tanks of a cargo as certified.</summary>
public sealed partial class CargoTankTable : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<CargoTankLine> Tanks { get; set; } = [];

    // "58.9 against max 60.0 kPa, EN228-A, terminal".
    private static string Held(LimitLine limit) =>
        $"{limit.Compared ?? "none"} against {(limit.Edge == LimitEdge.Maximum ? "max" : "min")} {limit.Effective} {limit.Unit}, {limit.AppliesTo}";
}
