using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Certificates;

/// <summary>An issued certificate: the document as it left the laboratory, byte for byte.</summary>
public sealed class Certificate : IReported
{
    public Guid Id { get; init; }
    public required string Number { get; init; }
    public int Revision { get; init; }

    /// <summary>The batch it certifies; null for a cargo, whose tanks name theirs.</summary>
    public Guid? BatchId { get; init; }

    /// <summary>The release it rests on; null for a cargo.</summary>
    public Guid? DecisionId { get; init; }
    public Guid? ReplacesId { get; init; }
    public string? ReplacesReason { get; init; }
    public required string CheckCode { get; init; }
    public DateTimeOffset IssuedAt { get; init; }
    public Guid IssuedBy { get; init; }
    public required byte[] Pdf { get; init; }
    public required string Sha256 { get; init; }

    /// <summary>What the document says, as JSON text.</summary>
    public required string Content { get; init; }
}
