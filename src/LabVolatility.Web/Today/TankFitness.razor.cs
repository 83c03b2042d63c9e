using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Today;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Today;

/// <summary>What the tanks hold, beside the limits that come.</summary>
public sealed partial class TankFitness : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<TankStanding> Tanks { get; set; } = [];

    // Rounded for the glance; the batch's page has the digits that are compared.
    private static string Standing(TankStanding tank) => tank.Binding is not { Value: { } value, Margin: { } margin } limit ? "no result"
        : $"{Rounding.Text(value, limit.Digits)} {limit.Unit}, {(tank.IsFit ? "fit" : "not fit")}: margin {Rounding.Text(margin, limit.Digits).Replace('-', '\u2212')}";
}
