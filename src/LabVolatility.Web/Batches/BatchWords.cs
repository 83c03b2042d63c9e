using System.Globalization;
using LabVolatility.Core.Limits;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Web.Layout;

namespace LabVolatility.Web.Batches;

/// <summary>The words of a batch as people say them.</summary>
public static class BatchWords
{
    public static string Of(Destination to) => $"{to.Area}, {to.Point.Text()}";

    public static string Of(IReadOnlyList<Destination> destinations) =>
        destinations.Count == 0 ? "no destination" : string.Join("; ", destinations.Select(Of));

    public static string Of(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    public static string Of(ProductState state) => state switch
    {
        ProductState.Finished => "finished",
        ProductState.Blendstock => "blendstock for blending with ethanol",
        _ => "hand blend",
    };

    public static string Period(DateOnly from, DateOnly until) => $"{Of(from)} to {Of(until)}";

    /// <summary>A rule with its confidence: "guarded at 95 %".</summary>
    public static string Of(DecisionRule rule, decimal confidence) =>
        rule == DecisionRule.Guarded ? $"guarded acceptance at {Rounding.Plain(confidence * 100m)} %" : "simple acceptance after rounding";

    public static (Mark? Mark, string Word) Of(BatchStanding standing) => standing switch
    {
        BatchStanding.Waiting => (Mark.Undecided, "waits for a decision"),
        BatchStanding.OnHold => (Mark.OnHold, "on hold"),
        BatchStanding.Released => (Mark.Released, "released"),
        BatchStanding.Rejected => (Mark.Rejected, "rejected"),
        _ => (Mark.ForReview, "marked for review"),
    };

    /// <summary>A limit in words: "DVPE max 60.0 kPa".</summary>
    public static string Of(LimitEvidence limit)
    {
        string?[] edges = [Edge("min", limit.EffectiveMinimum), Edge("max", limit.EffectiveMaximum)];
        return $"{limit.Quantity} {string.Join(", ", edges.OfType<string>())} {limit.Unit}";

        string? Edge(string name, decimal? value) => value is { } edge ? $"{name} {Rounding.Text(edge, limit.Digits)}" : null;
    }

    /// <summary>The margin with its sign: one below zero is beyond the limit. Shown with two more digits where the rule compares unrounded.</summary>
    public static string Margin(LimitEvidence limit) => limit.Margin is not { } margin ? ""
        : Rounding.Text(margin, Rounding.ToPlaces(margin, limit.Digits) == margin ? limit.Digits : limit.Digits + 2).Replace('-', '\u2212');

    /// <summary>R with two decimals, as certificates print it.</summary>
    public static string Reproducibility(LimitEvidence limit) => limit.Reproducibility is { } r ? Rounding.Text(r, 2) : "not set";

    /// <summary>A probability in per cent; what rounds to nothing says so.</summary>
    public static string Percent(decimal? probability) => probability switch
    {
        null => "",
        < 0.0005m => "< 0.1 %",
        var p => $"{Rounding.Text(p.Value * 100m, 1)} %",
    };

    /// <summary>How far a margin carries beside R: "2.3 kPa, R 3.0".</summary>
    public static string MarginBesideR(LimitEvidence limit) =>
        limit.Margin is null ? "no value yet"
        : $"margin {Margin(limit)} {limit.Unit}, R {Reproducibility(limit)}";

    /// <summary>"EN 13016-1:2007", "ASTM D5191-22".</summary>
    public static string Method(string method, string edition) =>
        method + (method.StartsWith("ASTM", StringComparison.Ordinal) ? "-" : ":") + edition;
}
