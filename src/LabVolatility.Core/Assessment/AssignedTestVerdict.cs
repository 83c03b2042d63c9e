using LabVolatility.Core.Methods;

namespace LabVolatility.Core.Assessment;

/// <summary>An assigned test value held against its acceptance limit.</summary>
/// <param name="Value">The ATV, not rounded; null where the two differ by more than R, or R is not set.</param>
/// <param name="AcceptanceMinimum">The lowest ATV that is accepted; null: none, or not known.</param>
/// <param name="AcceptanceMaximum">The highest ATV that is accepted; null: none, or not known.</param>
/// <param name="Accepted">Whether the ATV is on the good side; null where there is no ATV.</param>
/// <param name="Why">The reason, in words.</param>
/// <param name="Arithmetic">The steps.</param>
public sealed record AssignedTestVerdict(
    decimal? Value, decimal? AcceptanceMinimum, decimal? AcceptanceMaximum, bool? Accepted, string Why,
    IReadOnlyList<ArithmeticStep> Arithmetic);
