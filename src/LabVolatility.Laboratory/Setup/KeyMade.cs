namespace LabVolatility.Laboratory.Setup;

/// <summary>A new key; the secret is shown once and kept nowhere.</summary>
public sealed record KeyMade(Guid Id, string Name, string Secret, DateTimeOffset ExpiresAt);
