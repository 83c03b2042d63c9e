using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Something a decision rests on changed after it was signed.</summary>
public sealed class ReviewMark : IReported
{
    public Guid Id { get; init; }
    public Guid DecisionId { get; init; }
    public DateTimeOffset At { get; init; }
    public required string Cause { get; init; }
}
