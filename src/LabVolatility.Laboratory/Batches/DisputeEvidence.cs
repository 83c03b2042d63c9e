using LabVolatility.Core.Methods;

namespace LabVolatility.Laboratory.Batches;

/// <summary>What three laboratories come to, once ours and another party's differ.</summary>
/// <param name="Quantity">Such as DVPE.</param>
/// <param name="Unit">Unit of the figures.</param>
/// <param name="Dropped">The laboratory that was dropped as the outlier; null: none.</param>
/// <param name="Mean">Mean of those that agree, not rounded; null where none do.</param>
/// <param name="Why">In words.</param>
/// <param name="Arithmetic">The steps.</param>
public sealed record DisputeEvidence(
    string Quantity, string Unit, string? Dropped, decimal? Mean, string Why, IReadOnlyList<ArithmeticStep> Arithmetic);
