using LabVolatility.Core.Methods;

namespace LabVolatility.Core.Assessment;

/// <summary>Whether the means of two laboratories agree.</summary>
/// <param name="Agree">Null where it can't be judged.</param>
/// <param name="Difference">The difference of the means, zero or above, not rounded.</param>
/// <param name="Allowed">The largest acceptable difference; null where the precision is not set.</param>
/// <param name="Why">The reason, in words.</param>
/// <param name="Arithmetic">The steps; empty where it can't be judged.</param>
public sealed record TwoLaboratoryVerdict(
    bool? Agree, decimal Difference, decimal? Allowed, string Why, IReadOnlyList<ArithmeticStep> Arithmetic);
