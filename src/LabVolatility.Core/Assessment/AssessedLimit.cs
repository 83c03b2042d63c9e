using LabVolatility.Core.Limits;

namespace LabVolatility.Core.Assessment;

/// <summary>A picked limit and what came of it.</summary>
/// <param name="Picked">The limit, with its effective edges and why it was picked.</param>
/// <param name="Outcome">What came of it, in the limit's unit.</param>
/// <param name="Used">Zero-based indexes of the results that answered it; empty where none could.</param>
public sealed record AssessedLimit(PickedLimit Picked, LimitOutcome Outcome, IReadOnlyList<int> Used);
