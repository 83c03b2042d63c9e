namespace LabVolatility.Laboratory.People;

/// <summary>A new account, or one with a new secret, and the password to hand over; it can't be shown again.</summary>
/// <param name="OneTimePassword">Null for a program's account, which never signs in.</param>
public sealed record PersonAdded(Guid Id, string UserName, string? OneTimePassword);
