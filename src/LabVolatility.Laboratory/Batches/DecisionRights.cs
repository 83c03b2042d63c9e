using LabVolatility.Laboratory.People;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Who may take which decision; a key never may.</summary>
public static class DecisionRights
{
    public const string Rule = "no-key-signs";

    public static Right For(DecisionKind kind) => kind switch
    {
        DecisionKind.Concession => Right.GrantConcession,
        DecisionKind.Withdraw => Right.Withdraw,
        _ => Right.Decide,
    };

    /// <summary>The refusal in words, or null.</summary>
    public static string? Check(Actor actor, DecisionKind kind) =>
        actor.IsKey ? "No key can sign a decision: a person signs in and signs."
        : actor.Lacks(For(kind), kind == DecisionKind.Concession ? "Granting a concession" : "Deciding on batches");
}
