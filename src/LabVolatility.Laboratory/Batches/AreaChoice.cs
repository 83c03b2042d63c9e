namespace LabVolatility.Laboratory.Batches;

/// <summary>An area that a batch may be meant for.</summary>
public sealed record AreaChoice(string Code, string Name);
