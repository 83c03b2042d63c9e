using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Batches;

/// <summary>What can be picked when a batch is registered or changed.</summary>
public sealed record BatchChoices(IReadOnlyList<Grade> Grades, IReadOnlyList<Tank> Tanks, IReadOnlyList<AreaChoice> Areas);
