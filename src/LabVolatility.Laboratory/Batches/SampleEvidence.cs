using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Batches;

/// <summary>A sample of the batch as evidence.</summary>
public sealed record SampleEvidence
{
    public required string Number { get; init; }
    public required SampleLevel Level { get; init; }
    public required SampleState State { get; init; }
    public string? SamplePoint { get; init; }
    public required DateTimeOffset SampledAt { get; init; }
    public required string SampledBy { get; init; }
    public DateTimeOffset? ReceivedAt { get; init; }
    public required ReceiptVerdict Verdict { get; init; }
    public string? VerdictNote { get; init; }

    /// <summary>Number of the sample that it was drawn again for; that one counts as well unless it is void or set aside.</summary>
    public string? ResampleOf { get; init; }

    /// <summary>Why it is void for a decision, or null.</summary>
    public string? Void { get; init; }
    public required IReadOnlyList<ContainerEvidence> Containers { get; init; }
    public required IReadOnlyList<DeterminationEvidence> Determinations { get; init; }

    /// <summary>How it was made at the bench; null where it was drawn.</summary>
    public HandBlendEvidence? HandBlend { get; init; }

    /// <summary>How its duplicates stand, in words; null where nothing was measured.</summary>
    public string? Duplicates { get; init; }

    /// <summary>True when its duplicates agree, or there is one determination, or r isn't set.</summary>
    public required bool Usable { get; init; }
}
