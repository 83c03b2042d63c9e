using LabVolatility.Core.Limits;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Where a batch may be used, and where the limit bites.</summary>
public sealed record Destination(string Area, PointOfCompliance Point);
