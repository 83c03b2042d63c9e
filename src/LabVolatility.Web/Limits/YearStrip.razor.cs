using System.Globalization;
using LabVolatility.Core.Limits;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Limits;

/// <summary>A calendar of seasons drawn as a year; a window may wrap the year end.</summary>
public sealed partial class YearStrip : ComponentBase
{
    private const int Left = 76;
    private const int Wide = 924;
    private const int LaneHeight = 28;
    private const int Top = 20;

    [Parameter, EditorRequired]
    public IReadOnlyList<SeasonWindow> Calendar { get; set; } = [];

    [Parameter, EditorRequired]
    public DateOnly Today { get; set; }

    private int YearDays => DateTime.IsLeapYear(Today.Year) ? 366 : 365;

    private IReadOnlyList<(string Name, int Y, int Lanes, IReadOnlyList<StripBar> Bars)> Rows
    {
        get
        {
            var rows = new List<(string, int, int, IReadOnlyList<StripBar>)>();
            var y = Top;
            foreach (var point in Calendar.All(w => w.Point is null) ? [null] : PointsOfCompliance.All.Select(p => (PointOfCompliance?)p))
            {
                var bars = StripBar.Of(Calendar, point, Today);
                var lanes = bars.Count == 0 ? 1 : bars.Max(b => b.Lane) + 1;
                rows.Add((point?.Text() ?? "both points", y, lanes, bars));
                y += (lanes * LaneHeight) + 4;
            }

            return rows;
        }
    }

    private int Height => Top + Rows.Sum(row => (row.Lanes * LaneHeight) + 4);

    private IEnumerable<(decimal X, string Name)> Months => Enumerable.Range(1, 12).Select(month =>
        (X(new DateOnly(Today.Year, month, 1).DayOfYear - 1m), CultureInfo.InvariantCulture.DateTimeFormat.GetAbbreviatedMonthName(month)));

    private string Spoken => Calendar.Count == 0
        ? "A year without seasons."
        : $"The year's seasons: {string.Join("; ", Calendar.Select(w => w.Point is { } point ? $"{w}, {point.Text()}" : w.ToString()))}.";

    private decimal X(decimal days) => Left + (days * Wide / YearDays);
}
