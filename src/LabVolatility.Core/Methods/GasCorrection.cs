using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>What three expansions say about the dissolved gas. No figure is rounded.</summary>
/// <param name="Unit">The unit of the pressures.</param>
/// <param name="VaporAtIntroduction">The vapour pressure free of gas at the temperature of the expansions.</param>
/// <param name="GasAtIntroduction">The gas part after the last expansion, at that temperature.</param>
/// <param name="GasAtTest">The gas part at the test temperature.</param>
/// <param name="Solubility">
/// Volume of gas dissolved in a volume of liquid, at its own partial pressure; dimensionless. Null without a gas part
/// or without the specimen's volume.
/// </param>
/// <param name="Arithmetic">The steps.</param>
public sealed record GasCorrection(
    PressureUnit Unit,
    decimal VaporAtIntroduction,
    decimal GasAtIntroduction,
    decimal GasAtTest,
    decimal? Solubility,
    IReadOnlyList<ArithmeticStep> Arithmetic)
{
    private const decimal LowestPlausible = 0.05m;
    private const decimal HighestPlausible = 0.6m;

    /// <summary>What makes the solubility hard to believe, in words; null where it is 0.05 to 0.6, or not known.</summary>
    /// <remarks>
    /// Source: derived; air in fuels is at about 0.1 to 0.3. A wide-boiling sample, whose own vapour pressure falls as
    /// the chamber grows, shows a solubility that is too large, and its vapour pressure comes out low.
    /// </remarks>
    public string? Implausible => Solubility is not (< LowestPlausible or > HighestPlausible)
        ? null
        : $"The solubility of the gas comes out as {Rounding.Text(Solubility.Value, 3)}; air in fuel has {LowestPlausible} to {HighestPlausible}. A wide-boiling sample shows this, whose own vapour pressure falls as the chamber grows: the vapour pressure is then reported too low. So does a small leak.";
}
