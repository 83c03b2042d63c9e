using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Batches;

/// <summary>An occasion that the evidence shows, the tests that may be carried on, and the samples to be drawn again.</summary>
internal sealed record RetestFinding(
    RetestOccasion Occasion, string Subject, string Found, IReadOnlyList<BenchStanding> Tests, IReadOnlyList<string> Samples);
