using LabVolatility.Laboratory.Batches;

namespace LabVolatility.Laboratory.Today;

/// <summary>A decision signed in this shift.</summary>
public sealed record ShiftDecision(string Batch, DecisionKind Kind, string PersonName, DateTimeOffset At, string? Reason);
