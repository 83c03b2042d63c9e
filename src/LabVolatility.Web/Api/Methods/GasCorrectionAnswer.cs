using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Web.Api.Methods;

/// <summary>What three expansions say. The gas pressure at introduction is that of the last expansion.</summary>
/// <param name="VaporPressureAtIntroduction">Free of gas.</param>
/// <param name="GasPressureAtIntroduction">After the last expansion.</param>
/// <param name="GasPressure">At the test temperature.</param>
/// <param name="VaporPressure">The total pressure less the gas pressure.</param>
/// <param name="GasSolubility">Dimensionless; null where it can't be told.</param>
/// <param name="Findings">What is hard to believe.</param>
public sealed record GasCorrectionAnswer(
    Quantity VaporPressureAtIntroduction, Quantity GasPressureAtIntroduction, Quantity GasPressure, Quantity VaporPressure, decimal? GasSolubility,
    IReadOnlyList<FindingAnswer> Findings)
{
    public static GasCorrectionAnswer Of(GasCorrection found, decimal vaporPressure)
    {
        var unit = found.Unit.Symbol();
        return new(
            Quantity.Of(found.VaporAtIntroduction, unit), Quantity.Of(found.GasAtIntroduction, unit), Quantity.Of(found.GasAtTest, unit),
            Quantity.Of(vaporPressure, unit), found.Solubility is { } solubility ? Rounding.Trim(solubility) : null,
            found.Implausible is { } doubt
                ? [FindingAnswer.Of(new Finding(FindingCodes.GasPressureImplausible, FindingSeverity.Warning, doubt))]
                : []);
    }
}
