namespace LabVolatility.Laboratory.Batches;

/// <summary>An assigned test value against the acceptance limit of one limit.</summary>
/// <param name="Limit">The limit's key.</param>
/// <param name="Area">Where it holds.</param>
/// <param name="Value">The assigned test value; null where there is none.</param>
/// <param name="Accepted">Null where there is no value.</param>
/// <param name="Why">In words.</param>
public sealed record AssignedEvidence(string Limit, string Area, decimal? Value, bool? Accepted, string Why);
