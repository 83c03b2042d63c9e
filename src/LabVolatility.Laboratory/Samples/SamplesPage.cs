namespace LabVolatility.Laboratory.Samples;

/// <summary>A page of the list; <paramref name="Next"/> is null on the last one.</summary>
public sealed record SamplesPage(IReadOnlyList<ListedSample> Lines, SampleCursor? Next, IReadOnlyList<string> Grades);
