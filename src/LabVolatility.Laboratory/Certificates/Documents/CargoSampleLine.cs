namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>A sample behind a tank's vapour pressure: number, level and when it was drawn.</summary>
public sealed record CargoSampleLine(string Number, string Level, DateTimeOffset SampledAt);
