namespace LabVolatility.Laboratory.Bench;

/// <summary>A determination that a program sent without an operator, waiting for a person to take it on.</summary>
public sealed record WaitingForPerson(Guid Id, string SampleNumber, string Method, string Instrument, DateTimeOffset MeasuredAt, string Reading);
