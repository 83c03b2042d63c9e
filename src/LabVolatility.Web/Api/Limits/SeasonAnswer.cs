namespace LabVolatility.Web.Api.Limits;

/// <summary>A window of an area's calendar; both days, as month and day, are in it.</summary>
public sealed record SeasonAnswer(string Season, string From, string Until, string? PointOfCompliance, string? Class);
