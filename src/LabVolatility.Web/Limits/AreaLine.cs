using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;

namespace LabVolatility.Web.Limits;

/// <summary>An area as a row of the list.</summary>
/// <param name="Area">The version in force on the day; where none is, the latest.</param>
/// <param name="Ships">Whether it ships with the program.</param>
/// <param name="InForce">Whether that version holds on the day.</param>
/// <param name="Today">What gasoline must meet on the day, a line for each point of compliance where they differ.</param>
public sealed record AreaLine(Area Area, bool Ships, bool InForce, IReadOnlyList<PointToday> Today)
{
    public IReadOnlyList<Standing> Standings => [.. Area.Limits.Select(l => l.Limit.Standing).Distinct().Order()];

    /// <summary>The least known of its figures.</summary>
    public FactStatus Status => Area.Limits.Any(l => l.Limit.Status == FactStatus.FromMemory)
        ? FactStatus.FromMemory
        : Area.Limits.Count == 0 ? Area.Status : Area.Limits.Select(l => l.Limit.Status).First();

    /// <summary>How many of its limits nobody confirmed yet.</summary>
    public int FromMemory => Area.Limits.Count(l => l.Limit.Status == FactStatus.FromMemory);

    /// <summary>The rows for a day, the laboratory's own areas first.</summary>
    public static IReadOnlyList<AreaLine> Of(IReadOnlyList<Area> areas, DateOnly day) =>
    [
        .. areas.GroupBy(a => a.Code).Select(versions =>
        {
            var area = versions.FirstOrDefault(a => a.IsInForce(day)) ?? versions.OrderBy(a => a.EffectiveFrom).Last();
            return new AreaLine(area, PublishedAreas.All.Any(a => a.Code == area.Code), area.IsInForce(day), PointToday.Of(areas, area.Code, day));
        }).OrderBy(line => line.Ships),
    ];

    /// <summary>Whether a typed word occurs in its code, name, seasons or classes.</summary>
    public bool Holds(string text) =>
        new[] { Area.Code, Area.Name, Area.Source }.Concat(Area.Calendar.SelectMany(w => new[] { w.Season, w.Class ?? "" }))
            .Any(word => word.Contains(text, StringComparison.OrdinalIgnoreCase));
}
