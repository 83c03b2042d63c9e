namespace LabVolatility.Laboratory.Limits;

/// <summary>A shipped limit as confirmed: who read it where, and when.</summary>
public sealed record ConfirmedFact(string Key, string By, DateTimeOffset At, string Source);
