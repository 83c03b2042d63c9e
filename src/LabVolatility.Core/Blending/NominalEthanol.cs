using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Blending;

/// <summary>The ethanol content that a recipe's volumes make.</summary>
/// <remarks>
/// Nominal: both volumes at one temperature, no account taken of water or denaturant in the ethanol, nor of the small
/// change of volume on mixing. It describes the recipe; an allowance needs a measured content.
/// </remarks>
public static class NominalEthanol
{
    /// <summary>100 · ethanol / (blendstock + ethanol), with its arithmetic; % (V/V), not rounded.</summary>
    /// <param name="blendstock">Its volume.</param>
    /// <param name="ethanol">Its volume.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no liquid at all.</exception>
    /// <remarks>Source: definition of a volume fraction.</remarks>
    public static ArithmeticStep Of(Volume blendstock, Volume ethanol)
    {
        var unit = blendstock.Unit;
        var (stock, added) = (blendstock.Value, ethanol.In(unit));
        if (stock + added <= 0m)
            throw new ArgumentOutOfRangeException(nameof(blendstock), stock + added, "A blend has a volume above zero.");
        return new(
            "Nominal ethanol content", $"100 · {Rounding.Shown(added)} / ({Rounding.Shown(stock)} + {Rounding.Shown(added)})",
            Rounding.Trim(100m * added / (stock + added)), "% (V/V)", "the recipe's volumes, mixing not accounted for");
    }
}
