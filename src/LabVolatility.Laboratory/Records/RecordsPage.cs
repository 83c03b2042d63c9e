namespace LabVolatility.Laboratory.Records;

/// <summary>A page of audit records, newest first.</summary>
/// <param name="Records">At most fifty.</param>
/// <param name="Next">Ask for what comes before this sequence; null on the last page.</param>
public sealed record RecordsPage(IReadOnlyList<AuditRecord> Records, long? Next);
