namespace LabVolatility.Laboratory.Batches;

/// <summary>The value of one sample among the levels.</summary>
public sealed record LevelValue(string Level, string Sample, decimal Value);
