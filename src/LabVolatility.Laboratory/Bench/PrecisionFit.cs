namespace LabVolatility.Laboratory.Bench;

/// <summary>r and R at a level in the unit asked for; null where the laboratory has not entered them, and why.</summary>
public sealed record PrecisionFit(decimal? Repeatability, decimal? Reproducibility, string Why);
