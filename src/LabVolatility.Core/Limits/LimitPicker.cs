using LabVolatility.Core.Methods;

namespace LabVolatility.Core.Limits;

/// <summary>Picks the limits that apply to a product then and there, and says why.</summary>
public static class LimitPicker
{
    /// <summary>The limits in force for a product.</summary>
    /// <param name="areas">All areas that are known, so that a calendar may name another area.</param>
    /// <param name="query">The product, and where and when it is to be used.</param>
    /// <remarks>Source: each limit's own; windows include both end dates (40 CFR 1090.80).</remarks>
    public static LimitPick Pick(IReadOnlyList<Area> areas, ProductQuery query) => Pick(areas, query, []);

    private static LimitPick Pick(IReadOnlyList<Area> areas, ProductQuery query, IReadOnlyList<string> asked)
    {
        var known = areas.Where(candidate => candidate.Code == query.Area).ToList();
        if (known.Count == 0)
            return new([], null, $"There is no area {query.Area}.");
        if (known.FirstOrDefault(candidate => candidate.IsInForce(query.Date)) is not { } area)
            return new([], null, $"{query.Area} has no calendar in force on {Day(query)}.");
        if (asked.Contains(area.Code))
            return new([], null, $"The calendars of {string.Join(", ", asked)} name one another; none has a limit.");
        return area.Calendar.Count == 0
            ? FromLimits(area, null, query)
            : FromCalendar(areas, area, query, [.. asked, area.Code]);
    }

    private static LimitPick FromCalendar(
        IReadOnlyList<Area> areas, Area area, ProductQuery query, IReadOnlyList<string> asked)
    {
        var windows = area.Calendar
            .Where(w => (w.Point is null || w.Point == query.Point) && w.Contains(query.Date)).ToList();
        if (windows.Count == 0)
        {
            var allTheYear = FromLimits(area, null, query);
            return allTheYear.Limits.Count > 0
                ? allTheYear
                : new([], null, $"{area.Code} has no season in force on {Day(query)} at the {query.Point.Text()}.");
        }

        // A window may put the class of another area in force, such as EN228-D1 in a laboratory's winter; the
        // area's own limits, such as a contract's, hold on top of it.
        var picks = windows.SelectMany<SeasonWindow, LimitPick>(w => areas.Any(other => other.Code == w.Class)
            ? [Named(Pick(Granting(areas, area, w), query with { Area = w.Class! }, asked), area, w, query), FromLimits(area, w, query)]
            : [FromLimits(area, w, query)]).ToList();
        List<PickedLimit> limits = [.. picks.SelectMany(pick => pick.Limits).DistinctBy(picked => picked.Limit.Key)];
        var season = string.Join(", ", windows.Select(w => w.Season).Distinct());
        return limits.Count > 0 ? new(limits, season, null) : new([], season, picks[0].NoLimit);
    }

    // Whether a derogation is in force is the asked area's to say: a class that has an allowance doesn't bring it along.
    private static IReadOnlyList<Area> Granting(IReadOnlyList<Area> areas, Area area, SeasonWindow window) => area.Derogation
        ? areas
        : [.. areas.Select(other => other.Code == window.Class ? other with { Derogation = false } : other)];

    private static LimitPick Named(LimitPick pick, Area area, SeasonWindow window, ProductQuery query) => pick with
    {
        Limits =
        [
            .. pick.Limits.Select(picked => picked with
            {
                Area = area.Code,
                Season = window.Season,
                Why = $"{area.Name}: {window}, holds {Day(query)}; {window.Class} is in force then. {picked.Why}",
            }),
        ],
    };

    private static LimitPick FromLimits(Area area, SeasonWindow? window, ProductQuery query)
    {
        List<PickedLimit> limits =
        [
            .. area.Limits.Where(candidate => Applies(candidate, window, query))
                .Select(candidate => Picked(candidate.Limit, area, window, query)),
        ];
        return limits.Count > 0
            ? new(limits, window?.Season, null)
            : new([], window?.Season, $"{area.Code} has no limit for {query.Grade} on {Day(query)} at the {query.Point.Text()}.");
    }

    private static bool Applies(AreaLimit candidate, SeasonWindow? window, ProductQuery query) =>
        (candidate.Grade is null ? IsGasoline(query) : candidate.Grade == query.Grade)
        && (candidate.Point is null || candidate.Point == query.Point)
        && (candidate.Season is null || candidate.Season == window?.Season)
        && (candidate.Class is null || candidate.Class == window?.Class)
        && (candidate.Ethanol is null || candidate.Ethanol.Contains(query.EthanolPercent))
        && candidate.Limit.IsInForce(query.Date);

    private static bool IsGasoline(ProductQuery query)
    {
        var kind = SampleKinds.TryParse(query.Grade, out var named) ? named : query.Kind;
        return kind is SampleKind.Gasoline or SampleKind.EthanolBlend;
    }

    private static PickedLimit Picked(Limit limit, Area area, SeasonWindow? window, ProductQuery query)
    {
        var effective = EffectiveLimit.Maximum(limit, query.State, query.EthanolPercent, area.Derogation);
        var season = window is null ? "in force all the year" : $"{window}, holds {Day(query)}";
        var point = window?.Point is { } at ? $" at the {at.Text()}" : "";
        var why = $"{area.Name}: {season}{point}. {effective.Why}".TrimEnd();
        return new(limit, area.Code, window?.Season, limit.Minimum, effective.Maximum, effective.Allowance, why);
    }

    private static string Day(ProductQuery query) =>
        query.Date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
