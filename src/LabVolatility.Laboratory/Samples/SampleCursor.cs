namespace LabVolatility.Laboratory.Samples;

/// <summary>The last line of a page: its time (sampling, or deadline) and its number.</summary>
public sealed record SampleCursor(DateTimeOffset At, string Number);
