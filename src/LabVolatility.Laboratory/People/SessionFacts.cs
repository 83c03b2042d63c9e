namespace LabVolatility.Laboratory.People;

/// <summary>What decides whether a session still holds.</summary>
public sealed record SessionFacts(bool Active, string? SecurityStamp);
