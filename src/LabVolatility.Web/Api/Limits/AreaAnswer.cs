using System.Globalization;
using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;

namespace LabVolatility.Web.Api.Limits;

/// <summary>A place or a class with its own limits.</summary>
public sealed record AreaAnswer(
    string Code, string Name, bool Derogation, IReadOnlyList<SeasonAnswer> Calendar, IReadOnlyList<string> Quantities, string Source, string Status, string? Note)
{
    public static AreaAnswer Of(Area area) => new(
        area.Code, area.Name, area.Derogation,
        [.. area.Calendar.Select(w => new SeasonAnswer(w.Season, Day(w.From), Day(w.Until), w.Point?.Text(), w.Class))],
        [.. area.Limits.Select(l => l.Limit.Quantity).Distinct()], area.Source, area.Status.Text(), area.Note);

    private static string Day(MonthDay day) => string.Create(CultureInfo.InvariantCulture, $"{day.Month:00}-{day.Day:00}");
}
