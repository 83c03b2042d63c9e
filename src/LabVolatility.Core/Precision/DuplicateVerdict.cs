namespace LabVolatility.Core.Precision;

/// <summary>What a set of results by one operator on one material is worth.</summary>
/// <param name="Acceptable">Whether they agree within r; null where r is not set.</param>
/// <param name="Mean">The mean of the results in <paramref name="Used"/>, not rounded.</param>
/// <param name="Used">Zero-based indexes of the results that make the mean.</param>
/// <param name="Next">What to do.</param>
/// <param name="Needed">How many more results, with <see cref="NextStep.More"/>; else null.</param>
/// <param name="Why">The reason, in words.</param>
public sealed record DuplicateVerdict(
    bool? Acceptable, decimal Mean, IReadOnlyList<int> Used, NextStep Next, int? Needed, string Why);
