namespace LabVolatility.Laboratory.Today;

/// <summary>Where the audit records stand.</summary>
/// <param name="Records">How many there are.</param>
/// <param name="LastAt">When the last one was written; null where there is none.</param>
/// <param name="Since">How many were written in this shift.</param>
public sealed record TrailHead(long Records, DateTimeOffset? LastAt, int Since);
