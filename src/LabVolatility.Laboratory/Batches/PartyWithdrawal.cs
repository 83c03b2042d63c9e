using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Another party's result is withdrawn, with the reason; it stays readable.</summary>
public sealed class PartyWithdrawal : IReported
{
    public Guid PartyResultId { get; init; }
    public Guid By { get; init; }
    public required string ByName { get; init; }
    public DateTimeOffset At { get; init; }
    public required string Reason { get; init; }
}
