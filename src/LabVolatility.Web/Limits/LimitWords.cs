using System.Globalization;
using LabVolatility.Core.Limits;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Web.Limits;

/// <summary>Limits, areas and days as people say them.</summary>
public static class LimitWords
{
    private const string DayPattern = "yyyy-MM-dd";

    /// <summary>"at most 60.0 kPa", "45.0 to 60.0 kPa"; with the limit's own decimals.</summary>
    public static string Edges(decimal? minimum, decimal? maximum, string unit, int digits) => (minimum, maximum) switch
    {
        ({ } low, { } high) => $"{Rounding.Text(low, digits)} to {Rounding.Text(high, digits)} {unit}",
        ({ } low, null) => $"at least {Rounding.Text(low, digits)} {unit}",
        (null, { } high) => $"at most {Rounding.Text(high, digits)} {unit}",
        _ => "no edge set",
    };

    /// <summary>"DVPE", "RVP by EPA": a correlation is part of the quantity.</summary>
    public static string Quantity(Limit limit) => Quantity(limit.Quantity, limit.Correlation);

    public static string Quantity(string quantity, string? correlation) => correlation is null ? quantity : $"{quantity} by {correlation}";

    /// <summary>"EN 13016-1 (referee), EN 13016-3".</summary>
    public static string Methods(Limit limit) => limit.Methods.Count == 0
        ? "any that gives it"
        : string.Join(", ", limit.Methods.Select(m => m == limit.RefereeMethod ? $"{m} (referee)" : m));

    /// <summary>"+1.0 psi for 9 to 15 % ethanol".</summary>
    public static string Allowance(Limit limit) => limit.Allowance switch
    {
        FixedAllowance fixedOne => $"+{Rounding.Plain(fixedOne.Amount)} {limit.Unit} for {Rounding.Plain(fixedOne.EthanolLow)} to {Rounding.Plain(fixedOne.EthanolHigh)} % (V/V) ethanol",
        TableAllowance table => $"by table, up to +{Rounding.Plain(table.Points.Max(p => p.Amount))} {limit.Unit}",
        _ => "none",
    };

    /// <summary>"1 decimal", "whole numbers".</summary>
    public static string Decimals(int digits) => digits switch
    {
        0 => "whole numbers",
        1 => "1 decimal",
        _ => $"{digits} decimals",
    };

    /// <summary>"since 2026-05-01", "2026-05-01 to 2026-09-15", "long since".</summary>
    public static string Days(DateOnly? from, DateOnly? until) => (from, until) switch
    {
        (null, null) => "always",
        ({ } first, null) => $"from {Day(first)}",
        (null, { } last) => $"until {Day(last)}",
        ({ } first, { } last) => $"{Day(first)} to {Day(last)}",
    };

    public static string Day(DateOnly day) => day.ToString(DayPattern, CultureInfo.InvariantCulture);

    /// <summary>Reads a day as <see cref="Day"/> writes it.</summary>
    public static bool TryDay(string? text, out DateOnly day) =>
        DateOnly.TryParseExact((text ?? "").Trim(), DayPattern, CultureInfo.InvariantCulture, DateTimeStyles.None, out day);

    /// <summary>"terminal", "retail"; null is both.</summary>
    public static string Point(PointOfCompliance? point) => point?.Text() ?? "terminal and retail";

    /// <summary>"summer 1 May – 15 Sep, terminal: EN228-A", short enough for a cell.</summary>
    public static string Window(SeasonWindow window)
    {
        var place = window.Point is { } point ? $", {point.Text()}" : "";
        var inForce = window.Class is null ? "" : $": {window.Class}";
        return $"{window.Season} {Short(window.From)} – {Short(window.Until)}{place}{inForce}";
    }

    public static string Address(string area) => $"/limits/{Uri.EscapeDataString(area)}";

    private static string Short(MonthDay day) =>
        $"{day.Day} {CultureInfo.InvariantCulture.DateTimeFormat.GetAbbreviatedMonthName(day.Month)}";
}
