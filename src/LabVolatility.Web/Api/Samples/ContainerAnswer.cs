namespace LabVolatility.Web.Api.Samples;

public sealed record ContainerAnswer(
    int Number, string Code, string Container, Quantity ContainerVolume, decimal? FillPercent, Quantity? Temperature, string? Seal, int Openings);
