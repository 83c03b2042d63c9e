namespace LabVolatility.Laboratory.Batches;

/// <summary>Another party's result as evidence: what they reported, and how it stands beside ours.</summary>
public sealed record PartyEvidence
{
    public required Guid Id { get; init; }
    public required PartyKind Kind { get; init; }
    public required string Party { get; init; }
    public required string Laboratory { get; init; }
    public string? Sample { get; init; }
    public required string Quantity { get; init; }
    public required string Correlation { get; init; }
    public required string Method { get; init; }
    public string? Edition { get; init; }
    public required string Typed { get; init; }
    public required string Unit { get; init; }
    public required int Count { get; init; }
    public required bool Hazy { get; init; }
    public required DateOnly MeasuredOn { get; init; }
    public string? Reference { get; init; }
    public string? Seals { get; init; }
    public required SealMatch SealMatch { get; init; }
    public required string EnteredBy { get; init; }
    public required DateTimeOffset EnteredAt { get; init; }

    /// <summary>Why it was withdrawn, and by whom; null while it stands.</summary>
    public string? Withdrawn { get; init; }

    /// <summary>Null where it is withdrawn.</summary>
    public PartyComparison? Comparison { get; init; }
}
