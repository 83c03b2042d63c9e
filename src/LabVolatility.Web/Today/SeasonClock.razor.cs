using System.Globalization;
using LabVolatility.Core.Limits;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Today;
using LabVolatility.Web.Batches;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Today;

/// <summary>The year ahead, from today: which limits hold when at each destination. The table below has the same facts.</summary>
public sealed partial class SeasonClock : ComponentBase
{
    private const decimal Wide = 1000m;
    private const decimal Left = 196m;
    private const int Top = 22;
    private const int RowHeight = 40;
    private const int Bar = 30;

    // Of an average letter at the drawing's size.
    private const decimal LetterWide = 6.2m;

    [Parameter, EditorRequired]
    public IReadOnlyList<SeasonChange> Changes { get; set; } = [];

    [Parameter, EditorRequired]
    public DateOnly Today { get; set; }

    private decimal Height => Top + (RowHeight * Changes.Count);

    private DateOnly End => Changes.Max(c => c.Year[^1].Until);

    private IEnumerable<DateOnly> Months => Enumerable.Range(1, 12)
        .Select(n => new DateOnly(Today.Year, Today.Month, 1).AddMonths(n)).Where(month => month < End);

    private string Words => "The year ahead: " + string.Join("; ", Changes.Select(c =>
        $"{Place(c)}, {c.Before} until {BatchWords.Of(c.On.AddDays(-1))}, then {c.After}, {Count(c)}"));

    private static string Name(DateOnly month) => month.ToString(month.Month == 1 ? "MMM yyyy" : "MMM", CultureInfo.InvariantCulture);

    private static string Place(SeasonChange change) => $"{change.Area}, {change.Point.Text()}";

    private static string Count(SeasonChange change)
    {
        var unfit = change.Tanks.Count(t => !t.IsFit);
        return $"in {change.Days} d" + (change.Tanks.Count == 0 ? "" : unfit == 0 ? ": all tanks fit" : $": {unfit} of {change.Tanks.Count} tanks not fit");
    }

    // The picture has room for one limit; the rest stands in its hint and in the table.
    private static string First(SeasonPeriod period) => period.Limits.Split("; ")[0];

    private static string Number(decimal value) => Rounding.ToPlaces(value, 2).ToString(CultureInfo.InvariantCulture);

    private static int Row(int index) => Top + (RowHeight * index);

    private decimal X(DateOnly day) => Left + ((Wide - Left) * (day.DayNumber - Today.DayNumber) / (End.DayNumber + 1 - Today.DayNumber));

    private decimal Width(SeasonPeriod period) => X(period.Until.AddDays(1)) - X(period.From);

    // A pennant on the day of the change.
    private string Marker(SeasonChange change, int index) =>
        $"M{Number(X(change.On))} {Row(index) + Bar + 4}V{Row(index) - 4}l9 4l-9 4";
}
