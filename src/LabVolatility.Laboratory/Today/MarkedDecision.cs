using LabVolatility.Laboratory.Batches;

namespace LabVolatility.Laboratory.Today;

/// <summary>A decision in force that is marked for review, with the latest cause.</summary>
public sealed record MarkedDecision(string Batch, DecisionKind Kind, string PersonName, DateTimeOffset At, DateTimeOffset MarkedAt, string Cause);
