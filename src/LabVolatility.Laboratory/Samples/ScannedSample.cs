namespace LabVolatility.Laboratory.Samples;

/// <summary>What a scan leads to.</summary>
/// <param name="Number">The sample.</param>
/// <param name="State">Announced, received, refused.</param>
/// <param name="Container">The container scanned, where the code names one.</param>
/// <param name="Waiting">Methods still to be measured, the earliest deadline first.</param>
/// <param name="WhyNot">Why that container can't be tested; null when it can, or none was named.</param>
public sealed record ScannedSample(string Number, SampleState State, int? Container, IReadOnlyList<string> Waiting, string? WhyNot);
