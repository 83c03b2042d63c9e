using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Web.Api.Methods;

/// <summary>An authority's equation, once for each unit that it is printed in.</summary>
public sealed record CorrelationAnswer(string Name, string Authority, string Quantity, string Version, IReadOnlyList<EquationAnswer> Equations)
{
    public static CorrelationAnswer Of(Correlation correlation) => new(
        correlation.Name, correlation.Authority.Text(), correlation.Quantity, correlation.Version,
        [.. correlation.Forms.Select(f => new EquationAnswer(
            f.Unit.Symbol(), Api.Quantity.Of(f.ContainerMillilitres, "mL"), correlation.Equation(f), f.Source, f.Status.Text()))]);
}
