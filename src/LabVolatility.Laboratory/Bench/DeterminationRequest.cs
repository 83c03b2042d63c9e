namespace LabVolatility.Laboratory.Bench;

/// <summary>A determination to be reported, from the bench or through the interface.</summary>
public sealed record DeterminationRequest
{
    /// <summary>The same id sent again stores nothing new.</summary>
    public Guid CommandId { get; init; } = Guid.NewGuid();
    public required string SampleNumber { get; init; }
    public required string Method { get; init; }
    public int ContainerNumber { get; init; }
    public string? Instrument { get; init; }

    /// <summary>Null: now.</summary>
    public DateTimeOffset? MeasuredAt { get; init; }

    /// <summary>Account name of the person who measured; the bench sends the person at it. Null waits for a person.</summary>
    public string? MeasuredBy { get; init; }
    public required ReadingsAsTyped Readings { get; init; }
    public required HandlingAsTyped Handling { get; init; }
    public string? ExternalId { get; init; }
}
