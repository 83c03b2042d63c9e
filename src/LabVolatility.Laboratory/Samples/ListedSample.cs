using LabVolatility.Core.Methods;

namespace LabVolatility.Laboratory.Samples;

/// <summary>A sample as a line of the list.</summary>
public sealed record ListedSample
{
    public required string Number { get; init; }
    public required string Grade { get; init; }
    public string? Batch { get; init; }
    public string? Tank { get; init; }
    public string? Point { get; init; }
    public required SampleLevel Level { get; init; }
    public required DateTimeOffset SampledAt { get; init; }
    public required SampleState State { get; init; }

    /// <summary>Methods still to be measured.</summary>
    public required IReadOnlyList<string> Waiting { get; init; }

    /// <summary>The earliest deadline of what waits.</summary>
    public DateTimeOffset? DueAt { get; init; }

    /// <summary>Containers that nobody opened, sound and still here.</summary>
    public required int SealedLeft { get; init; }
    public required int Containers { get; init; }

    /// <summary>Why it is void for a decision; null when it stands.</summary>
    public string? Void { get; init; }
}
