using LabVolatility.Core.Limits;

namespace LabVolatility.Core.Assessment;

/// <summary>Holds results against the limits that were picked.</summary>
public static class Catalogue
{
    /// <summary>Each limit's outcome and the overall one.</summary>
    /// <param name="pick">The limits that apply.</param>
    /// <param name="results">All valid results; those that may answer a limit make one mean, unrounded.</param>
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
        var used = Answering(picked.Limit, results);
        var answers = used.Select(i => results[i]).ToList();
        var input = new LimitInput
        {
            Digits = picked.Limit.Digits,
            Unit = picked.Limit.Unit,
            Minimum = picked.EffectiveMinimum,
            Maximum = picked.EffectiveMaximum,
            Rule = rule,
            Comparison = comparison,
            Confidence = confidence,
        };
        var outcome = Conformity.Judge(answers.Count == 0 ? input : WithMean(input, picked.Limit, answers));
        return new(picked, answers.Count == 0 ? outcome with { Why = Refusals(picked.Limit, results) } : outcome, used);
    }

    // Results of two methods make no mean: the referee method's count, else those of the method named first.
    private static List<int> Answering(Limit limit, IReadOnlyList<MeasuredResult> results)
    {
        var able = Enumerable.Range(0, results.Count)
            .Where(i => LimitAnswer.Refusal(limit, results[i]) is null)
            .GroupBy(i => results[i].Method).ToList();
        var best = able.FirstOrDefault(group => group.Key == limit.RefereeMethod)
            ?? able.MinBy(group => limit.Methods.ToList().IndexOf(group.Key));
        return best is null ? [] : [.. best];
    }

    private static LimitInput WithMean(LimitInput input, Limit limit, List<MeasuredResult> answers)
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
}
