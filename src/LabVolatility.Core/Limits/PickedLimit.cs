namespace LabVolatility.Core.Limits;

/// <summary>A limit that applies, with its effective edges and the reason.</summary>
/// <param name="Limit">The limit.</param>
/// <param name="Area">The code of the area that was asked for.</param>
/// <param name="Season">The season in force; null where the area has none.</param>
/// <param name="EffectiveMinimum">In the limit's unit; null: none.</param>
/// <param name="EffectiveMaximum">With the allowance, rounded to the limit's decimals; null: none.</param>
/// <param name="AllowanceGiven">In the limit's unit, not rounded; null: none.</param>
/// <param name="Why">Season window, point, state, ethanol and derogation, in words.</param>
public sealed record PickedLimit(
    Limit Limit,
    string Area,
    string? Season,
    decimal? EffectiveMinimum,
    decimal? EffectiveMaximum,
    decimal? AllowanceGiven,
    string Why);
