using LabVolatility.Laboratory.Batches;

namespace LabVolatility.Laboratory.Certificates;

/// <summary>A result that is in the value held against a limit.</summary>
internal sealed record LimitBasis(SampleEvidence Sample, DeterminationEvidence Determination, ResultEvidence Result);
