namespace LabVolatility.Laboratory.Samples;

/// <summary>What can be picked when a sample is registered.</summary>
public sealed record SampleChoices(
    IReadOnlyList<Grade> Grades, IReadOnlyList<BatchChoice> Batches, IReadOnlyList<Tank> Tanks, IReadOnlyList<SamplePoint> Points);
