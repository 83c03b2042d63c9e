namespace LabVolatility.Laboratory.Batches;

/// <summary>A hand-over note that nobody has taken yet.</summary>
public sealed record OpenHandover(string Batch, HandoverNote Note);
