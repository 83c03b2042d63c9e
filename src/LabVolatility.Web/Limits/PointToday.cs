using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;

namespace LabVolatility.Web.Limits;

/// <summary>What finished gasoline must meet at a point of compliance on a day.</summary>
/// <param name="Point">The point; null: at both alike.</param>
/// <param name="Season">The season in force; null: none is named.</param>
/// <param name="Edges">The vapour-pressure edges before any allowance; empty: none applies.</param>
public sealed record PointToday(PointOfCompliance? Point, string? Season, IReadOnlyList<string> Edges)
{
    /// <summary>One line where both points are alike, else one for each.</summary>
    public static IReadOnlyList<PointToday> Of(IReadOnlyList<Area> areas, string area, DateOnly day)
    {
        var points = PointsOfCompliance.All.Select(point => At(areas, area, point, day)).ToList();
        return points.All(p => p.Words == points[0].Words) ? [points[0] with { Point = null }] : points;
    }

    /// <summary>"summer: RVP by EPA at most 9.0 psi", "no limit".</summary>
    public string Words
    {
        get
        {
            var edges = Edges.Count == 0 ? "no limit for gasoline" : string.Join("; ", Edges);
            return Season is null ? edges : $"{Season}: {edges}";
        }
    }

    private static PointToday At(IReadOnlyList<Area> areas, string area, PointOfCompliance point, DateOnly day)
    {
        var pick = LimitPicker.Pick(areas, new ProductQuery(
            SampleKind.Gasoline.Text(), ProductState.Finished, area, point, day, null));
        return new PointToday(point, pick.Season,
        [
            .. pick.Limits.Where(l => l.Limit.Required).Select(l =>
                $"{LimitWords.Quantity(l.Limit)} {LimitWords.Edges(l.EffectiveMinimum, l.EffectiveMaximum, l.Limit.Unit, l.Limit.Digits)}"),
        ]);
    }
}
