namespace LabVolatility.Core.Limits;

/// <summary>The limits that apply to a product then and there.</summary>
/// <param name="Limits">Those in force; empty where there is none.</param>
/// <param name="Season">The season in force; null where the area has none.</param>
/// <param name="NoLimit">Why none applies, in words; null where one does.</param>
public sealed record LimitPick(IReadOnlyList<PickedLimit> Limits, string? Season, string? NoLimit);
