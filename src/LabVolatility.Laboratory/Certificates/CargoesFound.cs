namespace LabVolatility.Laboratory.Certificates;

/// <summary>A page of the list of cargo certificates, and the number after which the next one begins.</summary>
public sealed record CargoesFound(IReadOnlyList<CargoLine> Lines, string? Next);
