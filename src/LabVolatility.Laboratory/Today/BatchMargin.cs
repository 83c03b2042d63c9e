using LabVolatility.Laboratory.Batches;

namespace LabVolatility.Laboratory.Today;

/// <summary>How near a decided batch was to the limit that bound it.</summary>
/// <param name="Binding">As frozen with the decision; null where nothing was measured.</param>
public sealed record BatchMargin(string Batch, string Grade, string? Tank, DecisionKind Kind, DateTimeOffset DecidedAt, LimitEvidence? Binding);
