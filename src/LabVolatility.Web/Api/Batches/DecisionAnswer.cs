using LabVolatility.Laboratory.Batches;

namespace LabVolatility.Web.Api.Batches;

/// <summary>The decision in force: who signed what, when; forReview where something it rests on changed since.</summary>
public sealed record DecisionAnswer(string State, string Meaning, string SignedBy, DateTimeOffset SignedAt, string? Reason, bool ForReview)
{
    public static DecisionAnswer? Of(DecisionInForce? decision) => decision is null
        ? null
        : new(DecisionWords.State(decision.Kind), decision.Meaning, decision.PersonName, decision.At, decision.Reason, decision.ForReview);
}
