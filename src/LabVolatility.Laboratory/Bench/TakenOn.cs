using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Bench;

/// <summary>A person takes on a determination that a program sent without an operator, and counts as its measurer.</summary>
public sealed class TakenOn : IReported
{
    public Guid DeterminationId { get; init; }
    public Guid PersonId { get; init; }
    public DateTimeOffset At { get; init; }
}
