namespace LabVolatility.Laboratory.Storage;

/// <summary>A trigger that holds a rule.</summary>
internal sealed record Guard(string Table, string Trigger, string Sql);
