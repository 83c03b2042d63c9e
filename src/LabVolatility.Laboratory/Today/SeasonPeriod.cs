namespace LabVolatility.Laboratory.Today;

/// <summary>Days on which the same limits hold, both included.</summary>
/// <param name="Limits">In words: "DVPE min 45.0, max 60.0 kPa".</param>
public sealed record SeasonPeriod(DateOnly From, DateOnly Until, string Limits);
