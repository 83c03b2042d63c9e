using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Bench;

namespace LabVolatility.Laboratory.Batches;

/// <summary>The value of one sample in a limit's own unit and correlation.</summary>
internal sealed record SampleValue(AssessedSample Sample, IReadOnlyList<LimitResult> Results)
{
    public decimal Mean => Results.Sum(r => r.Value) / Results.Count;
}

/// <summary>One determination's unrounded value in a limit's unit, with its arithmetic.</summary>
internal sealed record LimitResult(DeterminationState State, decimal Value, IReadOnlyList<ArithmeticStep> Arithmetic);
