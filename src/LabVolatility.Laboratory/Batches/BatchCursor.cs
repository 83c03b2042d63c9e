namespace LabVolatility.Laboratory.Batches;

/// <summary>The last line of a page: its time (registered, or needed by) and its number.</summary>
public sealed record BatchCursor(DateTimeOffset At, string Number);
