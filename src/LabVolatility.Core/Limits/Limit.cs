using LabVolatility.Core.Methods;

namespace LabVolatility.Core.Limits;

/// <summary>What a quantity must not go below or above.</summary>
/// <param name="Key">Its own name among all limits: "EN228-A/DVPE".</param>
/// <param name="Quantity">"DVPE", "RVP", "E70", "VLI".</param>
/// <param name="Correlation">The correlation it asks for: "EPA"; null: the answering method's own.</param>
/// <param name="Minimum">In <paramref name="Unit"/>; null: none.</param>
/// <param name="Maximum">In <paramref name="Unit"/>, before any allowance; null: none.</param>
/// <param name="Unit">"kPa", "psi", another pressure symbol, "% v/v" or "index".</param>
/// <param name="Digits">Decimals of the limit, to which a value is rounded for comparison.</param>
/// <param name="Methods">Designations of the methods that may answer it; empty: any.</param>
/// <param name="RefereeMethod">The one that decides in a dispute; null: not stated.</param>
/// <param name="Allowance">What it grants for ethanol.</param>
/// <param name="Standing">Legal, contract or internal.</param>
/// <param name="Source">Edition and clause.</param>
/// <param name="Status">How well it is known.</param>
/// <param name="EffectiveFrom">The first day it is in force; null: long since.</param>
/// <param name="EffectiveUntil">The last day it is in force; null: until further notice.</param>
/// <param name="Required">Whether an assessment needs an answer to it.</param>
/// <param name="Note">What the reader should know.</param>
public sealed record Limit(
    string Key,
    string Quantity,
    string? Correlation,
    decimal? Minimum,
    decimal? Maximum,
    string Unit,
    int Digits,
    IReadOnlyList<string> Methods,
    string? RefereeMethod,
    Allowance Allowance,
    Standing Standing,
    string Source,
    FactStatus Status,
    DateOnly? EffectiveFrom,
    DateOnly? EffectiveUntil,
    bool Required,
    string? Note)
{
    /// <summary>Whether it is in force on a day, both ends included.</summary>
    public bool IsInForce(DateOnly date) =>
        (EffectiveFrom is null || date >= EffectiveFrom) && (EffectiveUntil is null || date <= EffectiveUntil);
}
