using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Bench;

/// <summary>One run on an instrument. What was read stands in its revisions.</summary>
public sealed class Determination : IReported
{
    public Guid Id { get; init; }
    public Guid SampleId { get; init; }
    public Guid ContainerId { get; init; }
    public Guid? TestId { get; init; }
    public required string Method { get; init; }
    public required string Edition { get; init; }
    public required string InstrumentCode { get; init; }
    public DateTimeOffset MeasuredAt { get; init; }

    /// <summary>Who measured; null while a program's determination waits for a person to take it on.</summary>
    public Guid? MeasuredBy { get; init; }
    public Guid RecordedBy { get; init; }
    public DateTimeOffset RecordedAt { get; init; }
    public required string Origin { get; init; }

    /// <summary>The sender's own name for it; unique per instrument.</summary>
    public string? ExternalId { get; init; }

    /// <summary>The method allows one test a container: the container can't serve another.</summary>
    public bool SoleTest { get; init; }

    public List<DeterminationRevision> Revisions { get; init; } = [];
    public List<Result> Results { get; init; } = [];
    public TakenOn? TakenOn { get; init; }
}
