namespace LabVolatility.Laboratory.Batches;

/// <summary>Decisions in words.</summary>
public static class DecisionWords
{
    /// <summary>What the batch is once it is decided.</summary>
    public static string State(DecisionKind kind) => kind switch
    {
        DecisionKind.Release => "released",
        DecisionKind.Concession => "released under concession",
        DecisionKind.Hold => "on hold",
        DecisionKind.Reject => "rejected",
        DecisionKind.Withdraw => "withdrawn",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such decision."),
    };

    /// <summary>The act, for a button and for the record.</summary>
    public static string Act(DecisionKind kind) => kind switch
    {
        DecisionKind.Release => "release",
        DecisionKind.Concession => "release under concession",
        DecisionKind.Hold => "hold",
        DecisionKind.Reject => "reject",
        DecisionKind.Withdraw => "withdraw decision",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such decision."),
    };

    /// <summary>What the signature says.</summary>
    public static string Meaning(DecisionKind kind, string batch) => kind switch
    {
        DecisionKind.Release => $"I have looked at the results, limits and findings of batch {batch} and release it for the destinations named.",
        DecisionKind.Concession => $"Batch {batch} does not meet a contract or internal limit. I release it under concession for the reason given.",
        DecisionKind.Hold => $"I hold batch {batch}: it must not leave until this hold is lifted by another decision.",
        DecisionKind.Reject => $"I reject batch {batch}: it must not be delivered as what it was made for.",
        DecisionKind.Withdraw => $"I withdraw the decision in force on batch {batch}; certificates issued on it no longer hold.",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such decision."),
    };
}
