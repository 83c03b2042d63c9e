using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Batches;

/// <summary>A sample with its determinations, judged for whether it counts.</summary>
/// <param name="InDoubt">Those that count and whose instrument's last check of that day was out of band.</param>
internal sealed record AssessedSample(
    Sample Sample,
    IReadOnlyList<DeterminationState> Determinations,
    SampleEvidence Evidence,
    IReadOnlyList<DeterminationState> Used,
    IReadOnlyList<DeterminationState> InDoubt)
{
    /// <summary>False where it is void, refused or not received.</summary>
    public bool Counts => Evidence.Void is null && Sample.State == SampleState.Received;
}
