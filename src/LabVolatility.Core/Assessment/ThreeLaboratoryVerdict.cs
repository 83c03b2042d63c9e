using LabVolatility.Core.Methods;

namespace LabVolatility.Core.Assessment;

/// <summary>What three laboratories come to.</summary>
/// <param name="Used">Zero-based indexes of the laboratories that make the mean; empty where none do, or it can't be judged.</param>
/// <param name="Dropped">Index of the one that was dropped; null: none.</param>
/// <param name="Mean">The mean of the means in <paramref name="Used"/>, not rounded; null where there is none.</param>
/// <param name="Why">The reason, in words, the laboratories by their names.</param>
/// <param name="Arithmetic">The steps.</param>
public sealed record ThreeLaboratoryVerdict(
    IReadOnlyList<int> Used, int? Dropped, decimal? Mean, string Why, IReadOnlyList<ArithmeticStep> Arithmetic);
