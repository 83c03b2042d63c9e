namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>Where and when the batch was judged to be used; both dates belong to the period.</summary>
public sealed record DestinationLine(string Area, string PointOfCompliance, string Season, DateOnly From, DateOnly Until);
