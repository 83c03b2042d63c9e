namespace LabVolatility.Laboratory.Setup;

/// <summary>A key as listed in Setup; never its secret.</summary>
public sealed record KeyLine(
    Guid Id, string Name, string Prefix, string Owner, KeyScopes Scopes,
    DateTimeOffset CreatedAt, DateTimeOffset ExpiresAt, DateTimeOffset? RevokedAt, DateTimeOffset? LastUsedAt);
