namespace LabVolatility.Laboratory.Samples;

/// <summary>A sample that a movement begun after <paramref name="SampledAt"/> would void.</summary>
public sealed record StandingSample(string Number, string? Batch, DateTimeOffset SampledAt);
