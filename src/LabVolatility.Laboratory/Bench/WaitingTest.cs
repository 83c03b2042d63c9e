namespace LabVolatility.Laboratory.Bench;

/// <summary>A test that waits at the bench.</summary>
public sealed record WaitingTest
{
    public required Guid TestId { get; init; }
    public required string SampleNumber { get; init; }
    public required string Grade { get; init; }
    public string? Batch { get; init; }
    public string? Tank { get; init; }
    public required string Method { get; init; }
    public DateTimeOffset? DueAt { get; init; }

    /// <summary>Sent by a program, and waiting for a person to take them on.</summary>
    public required int ToTakeOn { get; init; }

    /// <summary>Determinations that count, and those asked for.</summary>
    public required int Made { get; init; }
    public required int Wanted { get; init; }

    /// <summary>Sealed containers that may be used, the retained portion left out.</summary>
    public required int Offered { get; init; }

    /// <summary>What it needs and why, as the duplicates' rule said; null at first.</summary>
    public string? Why { get; init; }

    /// <summary>When the person last typed something into it; null where they have no draft.</summary>
    public DateTimeOffset? OwnDraftAt { get; init; }
}
