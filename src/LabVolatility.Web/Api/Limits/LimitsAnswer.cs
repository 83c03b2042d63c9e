namespace LabVolatility.Web.Api.Limits;

public sealed record LimitsAnswer(IReadOnlyList<CatalogueLimit> Limits);
