using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;

namespace LabVolatility.Web.Api.Limits;

/// <summary>A limit as an area applies it, before any allowance.</summary>
public sealed record CatalogueLimit(
    string Area, string Key, string Quantity, string? Correlation, Quantity? Minimum, Quantity? Maximum, int Digits,
    IReadOnlyList<string> Methods, string? RefereeMethod, string? Allowance, string? Grade, string? PointOfCompliance, string? Season,
    string Standing, bool Required, DateOnly? EffectiveFrom, DateOnly? EffectiveUntil, string Source, string Status, string? Note, string? Why)
{
    /// <summary>A limit of an area, whenever it holds.</summary>
    public static CatalogueLimit Of(Area area, AreaLimit limit) =>
        Of(area.Code, limit.Limit) with { Grade = limit.Grade, PointOfCompliance = limit.Point?.Text(), Season = limit.Season };

    /// <summary>A limit that holds on the day asked for.</summary>
    public static CatalogueLimit Of(PickedLimit picked, string? grade, PointOfCompliance? point) =>
        Of(picked.Area, picked.Limit) with { Grade = grade, PointOfCompliance = point?.Text(), Season = picked.Season, Why = picked.Why };

    private static CatalogueLimit Of(string area, Limit limit) => new(
        area, limit.Key, limit.Quantity, limit.Correlation, Api.Quantity.Of(limit.Minimum, limit.Unit), Api.Quantity.Of(limit.Maximum, limit.Unit),
        limit.Digits, limit.Methods, limit.RefereeMethod, limit.Allowance.Source.Length == 0 ? null : limit.Allowance.Source, null, null, null,
        limit.Standing.Text(), limit.Required, limit.EffectiveFrom, limit.EffectiveUntil, limit.Source, limit.Status.Text(), limit.Note, null);
}
