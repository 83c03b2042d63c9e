namespace LabVolatility.Laboratory.Batches;

/// <summary>Something that happened to a batch: who, what, when and why.</summary>
/// <param name="At">When.</param>
/// <param name="What">In words: "released", "result of sample S2600417B amended".</param>
/// <param name="Who">Name, with roles where they were recorded; null where nobody in particular did it.</param>
/// <param name="Words">The meaning signed, or what changed.</param>
/// <param name="Why">The reason given.</param>
/// <param name="Decision">Set for a decision.</param>
/// <param name="Review">True for what marked a decision for review.</param>
public sealed record BatchEvent(
    DateTimeOffset At, string What, string? Who, string? Words = null, string? Why = null, DecisionKind? Decision = null, bool Review = false);
