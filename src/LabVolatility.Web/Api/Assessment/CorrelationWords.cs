using LabVolatility.Core.Methods;

namespace LabVolatility.Web.Api.Assessment;

/// <summary>Names that a correlation goes by: its own and its authority's.</summary>
internal static class CorrelationWords
{
    public static IReadOnlyList<string> All { get; } =
        [.. Correlations.All.Select(c => c.Name).Concat(Authorities.All.Select(a => a.Text())).Distinct()];
}
