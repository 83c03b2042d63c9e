namespace LabVolatility.Core.Limits;

/// <summary>A maximum with what was granted on it.</summary>
/// <param name="Maximum">In the limit's unit, rounded to its decimals; null: the limit has none.</param>
/// <param name="Allowance">What was granted, not rounded; null: nothing.</param>
/// <param name="Why">The reason, in words; empty where the limit grants nothing to anybody.</param>
public sealed record EffectiveMaximum(decimal? Maximum, decimal? Allowance, string Why);
