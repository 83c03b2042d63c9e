using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.People;

/// <summary>Somebody who can be called to sign, from when until when.</summary>
public sealed class OnCallTurn : IRecorded
{
    public Guid Id { get; init; }
    public Guid PersonId { get; init; }

    /// <summary>How to reach them, as people write it: "+47 55 01 02 03, ring twice".</summary>
    public required string Phone { get; init; }
    public DateTimeOffset From { get; init; }
    public DateTimeOffset Until { get; set; }
    public DateTimeOffset EnteredAt { get; init; }
    public Guid EnteredBy { get; init; }
    public Guid Version { get; set; }
}
