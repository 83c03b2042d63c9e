namespace LabVolatility.Laboratory.People;

/// <summary>A person as listed in Setup.</summary>
public sealed record PersonLine(
    Guid Id, string UserName, string FullName, Roles Roles, bool Active, bool IsService, DateTimeOffset? PasswordSetAt, DateTimeOffset? LockedUntil);
