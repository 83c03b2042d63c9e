namespace LabVolatility.Core.Assessment;

/// <summary>What one laboratory found: the mean of its valid results, not rounded.</summary>
/// <param name="Value">The mean, in the unit that all laboratories compared are given in.</param>
/// <param name="Count">How many results make it, 1 or more.</param>
public sealed record LaboratoryMean(decimal Value, int Count);
