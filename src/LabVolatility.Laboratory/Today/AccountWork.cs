namespace LabVolatility.Laboratory.Today;

/// <summary>What accounts and keys ask of an administrator.</summary>
/// <param name="FirstSignInDue">People who still hold a password given once by an administrator.</param>
/// <param name="LockedOut">People who mistyped their password too often and wait.</param>
/// <param name="KeysEnding">Interface keys that end within the next month, the earliest first.</param>
public sealed record AccountWork(IReadOnlyList<string> FirstSignInDue, IReadOnlyList<string> LockedOut, IReadOnlyList<EndingKey> KeysEnding);

/// <summary>An interface key and the moment from which it opens nothing any more.</summary>
public sealed record EndingKey(string Name, DateTimeOffset EndsAt);
