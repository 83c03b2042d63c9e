namespace LabVolatility.Laboratory.Bench;

/// <summary>One expansion's two fields at the bench, exactly as typed.</summary>
public sealed record ExpansionEntry(string? Volume = null, string? Pressure = null);
