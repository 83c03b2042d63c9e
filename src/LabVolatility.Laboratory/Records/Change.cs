namespace LabVolatility.Laboratory.Records;

/// <summary>What became of one recorded thing: null before it was added, null after it was deleted.</summary>
internal sealed record Change(string Subject, string SubjectId, string? Before, string? After);
