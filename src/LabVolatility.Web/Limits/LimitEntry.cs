using System.Globalization;
using LabVolatility.Core.Limits;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Limits;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Web.Limits;

/// <summary>A limit as typed.</summary>
public sealed class LimitEntry
{
    private const decimal Highest = 3_500_000m;

    public string? Key { get; set; }

    public string? Grade { get; set; }

    public string? Point { get; set; }

    /// <summary>Quantity, a bar, correlation: "RVP|EPA", "DVPE|".</summary>
    public string Measured { get; set; } = "DVPE|";

    public string? Minimum { get; set; }

    public string? Maximum { get; set; }

    public string Unit { get; set; } = PressureUnit.Kilopascal.Symbol();

    public string? Digits { get; set; } = "1";

    public HashSet<string> Methods { get; } = [];

    public string Standing { get; set; } = Core.Limits.Standing.Contract.Text();

    public bool Required { get; set; } = true;

    public string? Source { get; set; }

    public string? From { get; set; }

    public string? Until { get; set; }

    /// <summary>The next version of a limit: everything as it was, from a new day.</summary>
    public static LimitEntry Of(LaboratoryLimit limit)
    {
        var entry = new LimitEntry
        {
            Key = limit.Key,
            Grade = limit.GradeCode,
            Point = limit.Point?.Text(),
            Measured = $"{limit.Quantity}|{limit.Correlation}",
            Minimum = Typed(limit.Minimum, limit.Digits),
            Maximum = Typed(limit.Maximum, limit.Digits),
            Unit = limit.Unit,
            Digits = limit.Digits.ToString(CultureInfo.InvariantCulture),
            Standing = limit.Standing.Text(),
            Required = limit.Required,
            Source = limit.Source,
        };
        entry.Methods.UnionWith(limit.Methods);
        return entry;
    }

    /// <summary>The draft, or what can't be read of it.</summary>
    public LaboratoryLimit? Read(string area, out IReadOnlyList<Problem> problems)
    {
        var found = new List<Problem>();
        EntryNeeds.Text(Key, "/key", "Give the limit a name of its own.", found);
        var (minimum, maximum) = (Edge(Minimum, "/minimum", found), Edge(Maximum, "/maximum", found));
        if (!int.TryParse(Digits?.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var digits))
            found.Add(new Problem("/digits", "Give the decimals as a whole number, for example 1."));
        if (!Standings.TryParse(Standing, out var standing))
            found.Add(new Problem("/standing", "Say what stands behind it."));
        EntryNeeds.Text(Source, "/source", "Say where it stands: contract, clause, date.", found);
        var (from, until) = (EntryNeeds.Day(From, "/effectiveFrom", found), EntryNeeds.DayOrNone(Until, "/effectiveUntil", found));
        problems = found;
        var measured = Measured.Split('|');
        return found.Count > 0 ? null : new LaboratoryLimit
        {
            Key = Key ?? "",
            AreaCode = area,
            GradeCode = string.IsNullOrEmpty(Grade) ? null : Grade,
            Point = PointsOfCompliance.TryParse(Point, out var point) ? point : null,
            Quantity = measured[0],
            Correlation = measured is [_, { Length: > 0 } correlation] ? correlation : null,
            Minimum = minimum,
            Maximum = maximum,
            Unit = Unit,
            Digits = digits,
            Methods = [.. Methods.Order(StringComparer.Ordinal)],
            Standing = standing,
            Required = Required,
            Source = Source ?? "",
            EffectiveFrom = from,
            EffectiveUntil = until,
        };
    }

    private static string? Typed(decimal? edge, int digits) => edge is { } value ? Rounding.Text(value, digits) : null;

    private static decimal? Edge(string? text, string field, List<Problem> problems)
    {
        if (string.IsNullOrWhiteSpace(text))
            return null;
        if (QuantityText.TryReadNumber(text, 0m, Highest, out var value, out var problem))
            return value;
        problems.Add(new Problem(field, problem!));
        return null;
    }
}
