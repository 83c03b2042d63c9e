using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Batches;

/// <summary>The rule "one decision in force": what may follow what.</summary>
public static class OrderOfDecisions
{
    public const string Rule = "one-decision-in-force";

    /// <summary>The refusal, naming both states, or null.</summary>
    public static Problem? Check(DecisionInForce? inForce, DecisionKind next) => (inForce?.Kind, next) switch
    {
        (null or DecisionKind.Withdraw, DecisionKind.Withdraw) =>
            Refuse("There is no decision in force to withdraw."),
        (DecisionKind.Release or DecisionKind.Concession, DecisionKind.Release or DecisionKind.Concession) when inForce!.ForReview => null,
        (DecisionKind.Release or DecisionKind.Concession, not DecisionKind.Withdraw) =>
            Refuse($"The batch is {DecisionWords.State(inForce!.Kind)} by {inForce.PersonName}: withdraw that first, then {DecisionWords.Act(next)}."),
        (DecisionKind.Reject, DecisionKind.Release or DecisionKind.Concession or DecisionKind.Hold) =>
            Refuse($"The batch is rejected by {inForce!.PersonName}: withdraw that first, then {DecisionWords.Act(next)}."),
        (DecisionKind.Reject, DecisionKind.Reject) => Refuse($"The batch is rejected by {inForce!.PersonName} already."),
        _ => null,
    };

    private static Problem Refuse(string message) => new("/kind", message, Rule);
}
