using System.Globalization;
using LabVolatility.Core.Limits;

namespace LabVolatility.Web.Limits;

/// <summary>A stretch of the year in which a season is in force.</summary>
/// <param name="Label">Season and class: "summer · EN228-A".</param>
/// <param name="Words">The whole window in words.</param>
/// <param name="From">Days from 1 January to its first day, 0 to 365.</param>
/// <param name="Days">How many days it lasts, both ends included.</param>
/// <param name="Lane">Its row among those that overlap, 0 first.</param>
/// <param name="InForce">Whether today is in it.</param>
public sealed record StripBar(string Label, string Words, int From, int Days, int Lane, bool InForce)
{
    /// <summary>The bars for a point in a year; a window that wraps the year end gives two.</summary>
    public static IReadOnlyList<StripBar> Of(IEnumerable<SeasonWindow> calendar, PointOfCompliance? point, DateOnly today)
    {
        var bars = new List<StripBar>();
        foreach (var window in calendar.Where(w => w.Point is null || point is null || w.Point == point))
        {
            var (from, until) = (window.From.In(today.Year).DayOfYear - 1, window.Until.In(today.Year).DayOfYear);
            var last = DateTime.IsLeapYear(today.Year) ? 366 : 365;
            (int From, int Until)[] stretches = from < until ? [(from, until)] : [(0, until), (from, last)];
            var lane = Enumerable.Range(0, bars.Count + 1).First(free => bars.All(b => b.Lane != free || stretches.All(s => s.From >= b.From + b.Days || s.Until <= b.From)));
            bars.AddRange(stretches.Select(s => new StripBar(
                window.Class is null ? window.Season : $"{window.Season} · {window.Class}", window.ToString(), s.From, s.Until - s.From, lane, window.Contains(today))));
        }

        return bars;
    }

    /// <summary>A coordinate as drawings want it.</summary>
    internal static string At(decimal number) => number.ToString("0.##", CultureInfo.InvariantCulture);
}
