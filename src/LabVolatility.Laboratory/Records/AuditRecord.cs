namespace LabVolatility.Laboratory.Records;

/// <summary>One change of one regulated thing, chained to the record before it by its hash.</summary>
public sealed class AuditRecord
{
    public long Sequence { get; init; }
    public DateTimeOffset At { get; init; }
    public Guid? ActorId { get; init; }
    public required string Actor { get; init; }
    public required string Origin { get; init; }
    public required string Action { get; init; }
    public required string Subject { get; init; }
    public required string SubjectId { get; init; }
    public string? Before { get; init; }
    public string? After { get; init; }
    public string? Reason { get; init; }
    public required string Build { get; init; }
    public required string PreviousHash { get; init; }
    public required string Hash { get; init; }
}
