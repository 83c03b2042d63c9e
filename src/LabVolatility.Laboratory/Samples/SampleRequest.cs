namespace LabVolatility.Laboratory.Samples;

/// <summary>A sample to be registered.</summary>
public sealed record SampleRequest
{
    /// <summary>The same id sent again registers nothing new.</summary>
    public Guid CommandId { get; init; } = Guid.NewGuid();
    public string? Grade { get; init; }
    public string? Batch { get; init; }
    public string? SamplePoint { get; init; }
    public string? Tank { get; init; }
    public SampleLevel Level { get; init; }
    public DateTimeOffset? SampledAt { get; init; }
    public string? SampledBy { get; init; }

    /// <summary>Null: announced, not here yet.</summary>
    public DateTimeOffset? ReceivedAt { get; init; }
    public IReadOnlyList<ContainerRequest> Containers { get; init; } = [];
    public string? Note { get; init; }

    /// <summary>What a person decided where the condition is not as expected.</summary>
    public ReceiptVerdict Verdict { get; init; }
    public string? VerdictNote { get; init; }
}
