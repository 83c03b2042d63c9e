using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Setup;

/// <summary>A key of the machine interface; only its hash is kept.</summary>
public sealed class InterfaceKey : IRecorded
{
    public Guid Id { get; init; }
    public required string Name { get; init; }
    public Guid OwnerId { get; init; }
    public KeyScopes Scopes { get; init; }

    /// <summary>First characters, so that a person can tell keys apart.</summary>
    public required string Prefix { get; init; }

    [NotRecorded]
    public required string Hash { get; init; }

    public DateTimeOffset CreatedAt { get; init; }
    public DateTimeOffset ExpiresAt { get; init; }
    public DateTimeOffset? RevokedAt { get; set; }

    [NotRecorded]
    public DateTimeOffset? LastUsedAt { get; set; }
}
