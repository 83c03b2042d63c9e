using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Batches;

/// <summary>A sample with its determinations, judged for whether it counts.</summary>
internal sealed record AssessedSample(
    Sample Sample, IReadOnlyList<DeterminationState> Determinations, SampleEvidence Evidence, IReadOnlyList<DeterminationState> Used)
{
    /// <summary>False where it is void, refused or not received.</summary>
    public bool Counts => Evidence.Void is null && Sample.State == SampleState.Received;
}
