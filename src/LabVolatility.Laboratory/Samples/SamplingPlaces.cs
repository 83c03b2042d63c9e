namespace LabVolatility.Laboratory.Samples;

/// <summary>Where samples come from.</summary>
/// <param name="Tanks">All tanks, by code.</param>
/// <param name="Points">All sample points, by code.</param>
/// <param name="Grades">Codes of the grades that a tank may hold.</param>
public sealed record SamplingPlaces(IReadOnlyList<Tank> Tanks, IReadOnlyList<SamplePoint> Points, IReadOnlyList<string> Grades);
