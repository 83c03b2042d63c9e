using LabVolatility.Core.Methods;
using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Web.Api.Methods;

/// <summary>A test method as this build works it out.</summary>
public sealed record MethodAnswer(
    string Designation, string Edition, string Title, IReadOnlyList<string> Quantities, IReadOnlyList<string> Kinds, IReadOnlyList<string> Containers,
    Quantity LowestPressure, Quantity HighestPressure, Quantity Temperature, decimal VaporLiquidRatio, bool OneTestPerContainer,
    string DefaultAuthority, IReadOnlyList<CorrelationAnswer> Correlations, IReadOnlyList<PrecisionStatementAnswer> Precision, string Status, IReadOnlyList<string> Sources)
{
    public static MethodAnswer Of(TestMethod method, IReadOnlyList<PrecisionStatement> precision) => new(
        method.Designation, method.Edition, method.Title, method.Quantities,
        [.. method.Kinds.Select(k => k.Text())], [.. method.Containers.Select(c => c.Text())],
        Quantity.Of(method.Scope.LowKpa, "kPa"), Quantity.Of(method.Scope.HighKpa, "kPa"),
        Quantity.Of(method.NominalTemperature.Value, method.NominalTemperature.Unit.Symbol()), Rounding.Trim(method.NominalRatio), method.OneTestPerContainer,
        method.DefaultAuthority.Text(),
        [.. Core.Methods.Correlations.All.Where(c => c.Method == method.Designation).Select(CorrelationAnswer.Of)],
        [.. precision.Where(p => p.Method == method.Designation).Select(PrecisionStatementAnswer.Of)],
        method.Status.Text(), method.Sources);
}
