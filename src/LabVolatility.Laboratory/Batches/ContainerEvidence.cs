namespace LabVolatility.Laboratory.Batches;

/// <summary>A container of a sample as evidence.</summary>
public sealed record ContainerEvidence(
    int Number, string Kind, decimal Millilitres, decimal? FillPercent, string? Temperature, string? Seal, bool? SealIntact, int Openings, bool Retained);
