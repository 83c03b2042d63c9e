using LabVolatility.Core.Methods;

namespace LabVolatility.Core.Limits;

/// <summary>A place or a class with its own limits.</summary>
/// <param name="Code">"US-9.0", "EN228-A", or the laboratory's own.</param>
/// <param name="Name">In words.</param>
/// <param name="Derogation">Whether a derogation for ethanol is in force there.</param>
/// <param name="Calendar">Its seasons; empty: its limits hold all the year.</param>
/// <param name="Limits">Its own limits; may be empty where its calendar names other areas.</param>
/// <param name="Source">Edition and clause.</param>
/// <param name="Status">How well it is known.</param>
/// <param name="Note">What the reader should know.</param>
public sealed record Area(
    string Code,
    string Name,
    bool Derogation,
    IReadOnlyList<SeasonWindow> Calendar,
    IReadOnlyList<AreaLimit> Limits,
    string Source,
    FactStatus Status,
    string? Note)
{
    /// <summary>The first day this version of the area holds; null: always did.</summary>
    public DateOnly? EffectiveFrom { get; init; }

    /// <summary>The last day this version of the area holds; null: none.</summary>
    public DateOnly? EffectiveUntil { get; init; }

    /// <summary>Whether it holds on a day, both ends included.</summary>
    public bool IsInForce(DateOnly date) =>
        (EffectiveFrom is null || date >= EffectiveFrom) && (EffectiveUntil is null || date <= EffectiveUntil);
}
