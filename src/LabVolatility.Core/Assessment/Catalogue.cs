using LabVolatility.Core.Limits;
using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Assessment;

/// <summary>Holds results against the limits that were picked.</summary>
public static class Catalogue
{
    /// <summary>Each limit's outcome and the overall one.</summary>
    /// <param name="pick">The limits that apply.</param>
    /// <param name="results">All valid results; those of one method that may answer a limit make one mean, unrounded.</param>
    /// <param name="rule">How they are held against the limits.</param>
    /// <param name="comparison">What is compared under the simple rule.</param>
    /// <param name="confidence">Of a guarded verdict, at least 0.5 and below 1.</param>
    /// <remarks>
    /// Order: limit's unit, mean of unrounded results, effective limit, rounded once, compared.
    /// Source: 40 CFR 1090.50 for rounding once; ISO 4259-2:2017 for the mean.
    /// </remarks>
    public static CatalogueOutcome Assess(
        LimitPick pick,
        IReadOnlyList<MeasuredResult> results,
        DecisionRule rule = DecisionRule.Simple,
        Comparison comparison = Comparison.Rounding,
        decimal confidence = 0.95m)
    {
        List<AssessedLimit> limits = [.. pick.Limits.Select(picked => Assess(picked, results, rule, comparison, confidence))];
        var overall = OverallOutcome.Of(limits.Select(l => (l.Outcome.Outcome, l.Picked.Limit.Required)));
        return new(overall, limits, pick.Season, pick.NoLimit);
    }

    private static AssessedLimit Assess(
        PickedLimit picked, IReadOnlyList<MeasuredResult> results, DecisionRule rule, Comparison comparison, decimal confidence)
    {
        var limit = picked.Limit;
        var input = new LimitInput
        {
            Digits = limit.Digits,
            Unit = limit.Unit,
            Minimum = picked.EffectiveMinimum,
            Maximum = picked.EffectiveMaximum,
            Rule = rule,
            Comparison = comparison,
            Confidence = confidence,
        };
        // Results of two methods make no mean: each method answers for itself.
        List<MethodAnswer> answers =
        [
            .. Enumerable.Range(0, results.Count).Where(i => LimitAnswer.Refusal(limit, results[i]) is null)
                .GroupBy(i => results[i].Method)
                .Select(own => new MethodAnswer(own.Key, [.. own], Judge(input, limit, [.. own.Select(i => results[i])]))),
        ];
        if (answers.Count == 0)
            return new(picked, Conformity.Judge(input) with { Why = Refusals(limit, results) }, []);
        var governing = Governing(limit, answers);
        var others = answers.Where(a => a != governing).Select(a => a.InWords(limit)).ToList();
        return others.Count == 0
            ? new(picked, governing.Outcome, governing.Used)
            : new(picked, governing.Outcome with { Why = $"{governing.Outcome.Why} {Reason(limit, governing)} {string.Join(" ", others)}" }, governing.Used);
    }

    // The referee method decides; where it gave none the worst governs, so that no valid result is passed over.
    private static MethodAnswer Governing(Limit limit, IReadOnlyList<MethodAnswer> answers) =>
        answers.FirstOrDefault(a => a.Method == limit.RefereeMethod)
        ?? answers.OrderBy(a => OverallOutcome.Gravity(a.Outcome.Outcome)).ThenBy(a => a.Outcome.Margin ?? decimal.MaxValue).First();

    private static string Reason(Limit limit, MethodAnswer governing) => governing.Method == limit.RefereeMethod
        ? $"{governing.Method} decides where methods differ."
        : $"Of several methods the worse result governs, here that of {governing.Method}.";

    private static LimitOutcome Judge(LimitInput input, Limit limit, IReadOnlyList<MeasuredResult> answers)
    {
        var mean = WithMean(input, limit, answers);
        if (answers.Any(a => a.Count > 1))
            return Conformity.Judge(mean);
        var spread = Duplicates.Judge([.. answers.Select(a => LimitAnswer.InUnitOf(limit, a, a.Value))], mean.Repeatability);
        return spread.Acceptable == false
            ? Conformity.Judge(input) with { Why = spread.Why }
            : Conformity.Judge(WithMean(input, limit, [.. spread.Used.Select(i => answers[i])]));
    }

    private static LimitInput WithMean(LimitInput input, Limit limit, IReadOnlyList<MeasuredResult> answers)
    {
        var count = answers.Sum(a => a.Count);
        var sum = answers.Sum(a => LimitAnswer.InUnitOf(limit, a, a.Value) * a.Count);

        // Where the figures differ with the level the cautious ones are taken: the largest R, the smallest r.
        return input with
        {
            Value = answers.Count == 1 ? LimitAnswer.InUnitOf(limit, answers[0], answers[0].Value) : sum / count,
            Count = count,
            Hazy = answers.Any(a => a.Hazy),
            Reproducibility = answers.Any(a => a.Reproducibility is null)
                ? null : answers.Max(a => LimitAnswer.InUnitOf(limit, a, a.Reproducibility!.Value)),
            Repeatability = answers.Any(a => a.Repeatability is null)
                ? null : answers.Min(a => LimitAnswer.InUnitOf(limit, a, a.Repeatability!.Value)),
        };
    }

    private static string Refusals(Limit limit, IReadOnlyList<MeasuredResult> results)
    {
        var near = results.Where(r => r.Quantity == limit.Quantity).Select(r => LimitAnswer.Refusal(limit, r)).ToList();
        return near.Count > 0 ? string.Join(' ', near) : $"There is no result for {limit.Quantity}.";
    }

    /// <summary>What one method's results say about a limit.</summary>
    private sealed record MethodAnswer(string Method, IReadOnlyList<int> Used, LimitOutcome Outcome)
    {
        public string InWords(Limit limit) =>
            $"{Method} found {(Outcome.Value is { } value ? $"{Rounding.Text(value, limit.Digits)} {limit.Unit}" : "results that differ too much")}: {Outcome.Outcome.Text()}.";
    }
}
