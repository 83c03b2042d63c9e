using LabVolatility.Core.Methods;
using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Web.Api.Methods;

/// <summary>r and R as the laboratory entered them: constant + slope · level, in the unit.</summary>
public sealed record PrecisionStatementAnswer(
    string Edition, string Quantity, string? Container, Quantity? ContainerVolume, Quantity? From, Quantity? Until, string Unit,
    decimal? RepeatabilityConstant, decimal? RepeatabilitySlope, decimal? ReproducibilityConstant, decimal? ReproducibilitySlope, string Source, string Status)
{
    public static PrecisionStatementAnswer Of(PrecisionStatement s) => new(
        s.Edition, s.Quantity, s.Container?.Text(), Api.Quantity.Of(s.ContainerMillilitres, "mL"), Api.Quantity.Of(s.LowKpa, "kPa"), Api.Quantity.Of(s.HighKpa, "kPa"),
        s.Unit.Symbol(), Plain(s.Repeatability?.Constant), Plain(s.Repeatability?.Slope), Plain(s.Reproducibility?.Constant), Plain(s.Reproducibility?.Slope),
        s.Source, s.Status.Text());

    private static decimal? Plain(decimal? number) => number is { } n ? Rounding.Trim(n) : null;
}
