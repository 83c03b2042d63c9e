namespace LabVolatility.Laboratory.Limits;

/// <summary>A draft that another person than its author approves.</summary>
/// <param name="Key">The limit's key; null: the area itself is the draft.</param>
/// <param name="Area">The area's code.</param>
/// <param name="By">Who drafted it.</param>
/// <param name="At">When.</param>
public sealed record LimitDraft(string? Key, string Area, string By, DateTimeOffset At);
