using LabVolatility.Core.Limits;

namespace LabVolatility.Core.Assessment;

/// <summary>Results held against all limits that apply then and there.</summary>
/// <param name="Outcome">The overall outcome, of the required limits.</param>
/// <param name="Limits">Each limit with its own outcome.</param>
/// <param name="Season">The season in force; null where the area has none.</param>
/// <param name="NoLimit">Why no limit applies; null where one does.</param>
public sealed record CatalogueOutcome(
    Outcome Outcome, IReadOnlyList<AssessedLimit> Limits, string? Season, string? NoLimit);
