using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Batches;

/// <summary>What the next shift must know or do about a batch. Open until somebody takes it.</summary>
public sealed class HandoverNote : IReported
{
    public Guid Id { get; init; }
    public Guid BatchId { get; init; }

    /// <summary>The hold that it was written with, or null.</summary>
    public Guid? DecisionId { get; init; }
    public required string Text { get; init; }

    /// <summary>Who is asked, as people say it: "the day shift", a name; null for whoever decides next.</summary>
    public string? AskedOf { get; init; }
    public DateTimeOffset? DueAt { get; init; }
    public Guid By { get; init; }
    public required string ByName { get; init; }
    public DateTimeOffset At { get; init; }
    public HandoverTaken? Taken { get; init; }
}
