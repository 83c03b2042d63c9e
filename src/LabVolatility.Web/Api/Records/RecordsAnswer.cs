namespace LabVolatility.Web.Api.Records;

/// <summary>Whether the records are as they were written; firstBroken is the number of the first that isn't.</summary>
public sealed record RecordsAnswer(bool Intact, long Records, string? Head, long? FirstBroken);
