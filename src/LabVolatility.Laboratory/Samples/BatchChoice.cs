namespace LabVolatility.Laboratory.Samples;

/// <summary>A batch that a sample may belong to.</summary>
public sealed record BatchChoice(string Number, string Grade, string? Tank);
