using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Certificates.Documents;
using Outcome = LabVolatility.Core.Limits.Outcome;

namespace LabVolatility.Laboratory.Certificates;

/// <summary>The limits of a batch for its certificate: one line an edge, with the value as compared.</summary>
internal static class CertificateLimits
{
    public static IReadOnlyList<LimitLine> Of(Evidence evidence) =>
    [
        .. evidence.Limits.Where(l => l.Required || l.Outcome is Outcome.Conforms or Outcome.DoesNotConform).SelectMany(l => Edges(evidence, l)),
    ];

    /// <summary>The limit in words, for a concession.</summary>
    public static string Words(LimitEvidence limit) =>
        $"{limit.Quantity}"
        + (limit.EffectiveMinimum is { } min ? $" minimum {Rounding.Text(min, limit.Digits)}" : "")
        + (limit.EffectiveMaximum is { } max ? $" maximum {Rounding.Text(max, limit.Digits)}" : "")
        + $" {limit.Unit} ({limit.Standing.Text()})";

    private static IEnumerable<LimitLine> Edges(Evidence evidence, LimitEvidence limit)
    {
        if (limit.Minimum is { } minimum)
            yield return Line(evidence, limit, LimitEdge.Minimum, minimum, limit.EffectiveMinimum ?? minimum, null, limit.Value - limit.EffectiveMinimum, limit.AcceptanceMinimum);
        if (limit.Maximum is { } maximum)
            yield return Line(evidence, limit, LimitEdge.Maximum, maximum, limit.EffectiveMaximum ?? maximum, limit.Allowance, limit.EffectiveMaximum - limit.Value, limit.AcceptanceMaximum);
    }

    private static LimitLine Line(
        Evidence evidence, LimitEvidence limit, LimitEdge edge, decimal basis, decimal effective, decimal? allowance, decimal? unroundedMargin, decimal? acceptance)
    {
        var compared = limit.Compared is null ? (decimal?)null : decimal.Parse(limit.Compared, System.Globalization.CultureInfo.InvariantCulture);
        var margin = evidence.Rule == DecisionRule.Guarded ? unroundedMargin
            : edge == LimitEdge.Minimum ? compared - effective : effective - compared;
        var used = Used(evidence, limit);
        return new LimitLine
        {
            Quantity = limit.Quantity,
            Edge = edge,
            Unit = limit.Unit,
            Base = Rounding.Text(basis, limit.Digits),
            Allowance = allowance is { } given ? Rounding.Plain(given) : null,
            Effective = Rounding.Text(effective, limit.Digits),
            Source = limit.Source,
            Standing = limit.Standing.Text(),
            FromMemory = limit.Status == FactStatus.FromMemory,
            AppliesTo = $"{limit.Area}, {limit.Point.Text()}{(limit.Season is null ? "" : $", {limit.Season}")}{(limit.HandBlend is null ? "" : $"; hand blend {limit.HandBlend}")}",
            SampleNumbers = [.. used.Select(u => u.Sample.Number).Distinct()],
            Method = used.Count == 0 ? null : used[0].Determination.Method,
            Correlation = used.Count == 0 ? null : used[0].Result.CorrelationVersion,
            Compared = limit.Compared,
            Rule = evidence.Rule == DecisionRule.Guarded
                ? DecisionRuleWords.Guarded(evidence.Confidence * 100m, acceptance is { } a ? $"{Rounding.Text(a, limit.Digits + 2)} {limit.Unit}" : null)
                : DecisionRuleWords.Rounding,
            Margin = margin is { } m ? Rounding.Text(m, evidence.Rule == DecisionRule.Guarded ? limit.Digits + 2 : limit.Digits) : null,
            Outcome = OutcomeOf(limit.Outcome),
            Why = limit.Outcome == Outcome.Conforms ? null : limit.OutcomeWhy,
        };
    }

    /// <summary>What is in the value that was held against a limit.</summary>
    internal static IReadOnlyList<LimitBasis> Used(Evidence evidence, LimitEvidence limit) =>
    [
        .. CertificateText.Counting(evidence)
            .Where(s => limit.Basis?.Contains(s.Number, StringComparison.Ordinal) == true)
            .SelectMany(s => s.Determinations.Where(d => d.DoesNotCount is null)
                .SelectMany(d => d.Results.Where(r => r.Quantity == limit.Quantity && (limit.Correlation is null || r.Correlation == limit.Correlation))
                    .Select(r => new LimitBasis(s, d, r)))),
    ];

    private static LimitOutcome OutcomeOf(Outcome outcome) => outcome switch
    {
        Outcome.Conforms => LimitOutcome.Conforms,
        Outcome.DoesNotConform => LimitOutcome.DoesNotConform,
        Outcome.NotDecided => LimitOutcome.NotDecided,
        _ => LimitOutcome.Incomplete,
    };
}
