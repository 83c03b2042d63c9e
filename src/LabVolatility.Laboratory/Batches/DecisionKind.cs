namespace LabVolatility.Laboratory.Batches;

public enum DecisionKind
{
    Release,

    /// <summary>Release under concession: against a contract or internal limit, never a legal one.</summary>
    Concession,
    Hold,
    Reject,

    /// <summary>Takes a decision back; both stay visible.</summary>
    Withdraw,
}
