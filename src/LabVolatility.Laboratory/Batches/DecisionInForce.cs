namespace LabVolatility.Laboratory.Batches;

/// <summary>The decision in force on a batch.</summary>
/// <param name="ForReview">Something it rests on changed after it was signed.</param>
public sealed record DecisionInForce(
    Guid Id, int Sequence, DecisionKind Kind, Guid PersonId, string PersonName, string Meaning, string? Reason, DateTimeOffset At, bool ForReview)
{
    public static DecisionInForce Of(Decision decision, bool forReview) => new(
        decision.Id, decision.Sequence, decision.Kind, decision.PersonId, decision.PersonName, decision.Meaning, decision.Reason,
        decision.At, forReview);
}
