using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Certificates;

/// <summary>An issued certificate: the document as it left the laboratory, byte for byte.</summary>
public sealed class Certificate : IReported
{
    public Guid Id { get; init; }
    public required string Number { get; init; }
    public int Revision { get; init; }
    public Guid BatchId { get; init; }
    public Guid DecisionId { get; init; }
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
