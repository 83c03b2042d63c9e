namespace LabVolatility.Web.Api.Limits;

public sealed record AreasAnswer(IReadOnlyList<AreaAnswer> Areas);
