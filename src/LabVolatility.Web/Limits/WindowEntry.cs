using System.Globalization;
using LabVolatility.Core.Limits;

namespace LabVolatility.Web.Limits;

/// <summary>A season window as typed.</summary>
public sealed class WindowEntry
{
    public string? Season { get; set; }

    public string? FromDay { get; set; } = "1";

    public int FromMonth { get; set; } = 1;

    public string? UntilDay { get; set; } = "31";

    public int UntilMonth { get; set; } = 12;

    public string? Point { get; set; }

    public string? Class { get; set; }

    public static WindowEntry Of(SeasonWindow window) => new()
    {
        Season = window.Season,
        FromDay = window.From.Day.ToString(CultureInfo.InvariantCulture),
        FromMonth = window.From.Month,
        UntilDay = window.Until.Day.ToString(CultureInfo.InvariantCulture),
        UntilMonth = window.Until.Month,
        Point = window.Point?.Text(),
        Class = window.Class,
    };

    /// <summary>The window; a day that can't be read is day 0, which the laboratory refuses.</summary>
    public SeasonWindow Read() => new(
        (Season ?? "").Trim(), new MonthDay(FromMonth, Number(FromDay)), new MonthDay(UntilMonth, Number(UntilDay)),
        PointsOfCompliance.TryParse(Point, out var point) ? point : null, string.IsNullOrEmpty(Class) ? null : Class);

    /// <summary>The window where both its days exist, to be drawn.</summary>
    public SeasonWindow? Drawn() => Read() is var window
        && MonthDay.TryFrom(window.From.Month, window.From.Day, out _) && MonthDay.TryFrom(window.Until.Month, window.Until.Day, out _)
            ? window
            : null;

    private static int Number(string? text) =>
        int.TryParse(text?.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var day) ? day : 0;
}
