namespace LabVolatility.Laboratory.Batches;

/// <summary>A decision to be signed.</summary>
/// <param name="CommandId">The same id sent again signs nothing twice.</param>
/// <param name="Batch">Number of the batch.</param>
/// <param name="Kind">What is decided.</param>
/// <param name="ExpectedSequence">Sequence of the decision in force that the signer saw; 0 for none.</param>
/// <param name="EvidenceHash">Hash of the evidence that the signer saw.</param>
/// <param name="Reason">Why; due for all but a plain release.</param>
/// <param name="Password">The signer's password, typed again.</param>
public sealed record DecisionRequest(
    Guid CommandId, string Batch, DecisionKind Kind, int ExpectedSequence, string EvidenceHash, string? Reason, string Password)
{
    /// <summary>What the next shift must know or do; a hold mostly has it.</summary>
    public Handover? Handover { get; init; }

    // A record prints its members: the password must not reach a log that way.
    public override string ToString() => $"{Kind} of batch {Batch} after decision {ExpectedSequence}";
}
