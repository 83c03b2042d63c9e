namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>One sample and the state in which it came.</summary>
public sealed record SampleLine
{
    public required string Number { get; init; }

    public required string Level { get; init; }

    public string? SamplePoint { get; init; }

    public required DateTimeOffset SampledAt { get; init; }

    public required string SampledBy { get; init; }

    public DateTimeOffset? ReceivedAt { get; init; }

    /// <summary>Kind and size: "2 glass bottles, 1 L, 75 % full".</summary>
    public string? Containers { get; init; }

    public string? Seal { get; init; }

    public string? Condition { get; init; }
}
