using LabVolatility.Core.Methods;

namespace LabVolatility.Core.Published;

/// <summary>One published value held against what this program works out.</summary>
/// <param name="What">What is worked out, in words.</param>
/// <param name="Source">Where the expected value stands or follows from.</param>
/// <param name="Status">How well the source is known.</param>
/// <param name="Expected">The published value.</param>
/// <param name="Computed">What this program gives; null: it gives none.</param>
/// <param name="Tolerance">How far they may differ, included; 0: not at all.</param>
public sealed record PublishedCheck(
    string What, string Source, FactStatus Status, decimal Expected, decimal? Computed, decimal Tolerance)
{
    /// <summary>Computed less expected; null where nothing was computed.</summary>
    public decimal? Difference => Computed - Expected;

    /// <summary>Whether the difference is within the tolerance.</summary>
    public bool Passed => Difference is { } difference && Math.Abs(difference) <= Tolerance;
}
