using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Who took a hand-over note, and when: from then on it is theirs.</summary>
public sealed class HandoverTaken : IReported
{
    public Guid NoteId { get; init; }
    public Guid By { get; init; }
    public required string ByName { get; init; }
    public DateTimeOffset At { get; init; }
}
