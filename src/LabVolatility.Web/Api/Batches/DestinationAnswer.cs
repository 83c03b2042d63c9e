namespace LabVolatility.Web.Api.Batches;

public sealed record DestinationAnswer(string Area, string PointOfCompliance);
