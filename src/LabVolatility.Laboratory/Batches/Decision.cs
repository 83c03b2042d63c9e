using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Batches;

/// <summary>A signed decision on a batch. The one with the highest sequence is in force.</summary>
public sealed class Decision : IReported
{
    public Guid Id { get; init; }
    public Guid BatchId { get; init; }

    /// <summary>1, 2, … within the batch; unique, so that one of several signers wins.</summary>
    public int Sequence { get; init; }
    public DecisionKind Kind { get; init; }
    public Guid? AssessmentId { get; init; }
    public string? EvidenceHash { get; init; }
    public Guid PersonId { get; init; }
    public required string PersonName { get; init; }
    public required string PersonRoles { get; init; }

    /// <summary>What the signature says, as it was shown to the signer.</summary>
    public required string Meaning { get; init; }
    public string? Reason { get; init; }
    public DateTimeOffset At { get; init; }
}
