namespace LabVolatility.Laboratory.Bench;

/// <summary>A handling step or caution that a person confirmed.</summary>
public sealed record ConfirmedStep(string Code, DateTimeOffset At);
