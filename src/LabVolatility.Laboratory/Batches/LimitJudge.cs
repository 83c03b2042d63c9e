using LabVolatility.Core.Assessment;
using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Holds the batch's samples against one picked limit.</summary>
internal static class LimitJudge
{
    public static LimitEvidence Judge(
        (PickedLimit Limit, Destination To, string Days) picked, IReadOnlyList<AssessedSample> samples,
        IReadOnlyList<PrecisionStatement> precision, Grade grade, List<LevelEvidence> levels)
    {
        var limit = picked.Limit.Limit;
        if (!PressureUnits.TryParse(limit.Unit, out var unit))
            return Empty(picked, $"{limit.Quantity} is not measured here.");
        var values = SampleValues.Of(limit, unit, samples);
        var unusable = values.FirstOrDefault(v => !v.Sample.Evidence.Usable);
        if (unusable is not null)
            return Empty(picked, $"Sample {unusable.Sample.Sample.Number}: {unusable.Sample.Evidence.Duplicates}");
        if (values.Count == 0)
            return Empty(picked, SampleValues.WhyNone(limit, samples));

        var level = LevelJudge.Judge(limit, unit, values, precision);
        if (level is not null)
            levels.Add(level);
        var basis = Governing(picked.Limit, values, level);
        return Judge(picked, unit, basis, precision, grade, level);
    }

    private static LimitEvidence Judge(
        (PickedLimit Limit, Destination To, string Days) picked, PressureUnit unit, IReadOnlyList<SampleValue> basis,
        IReadOnlyList<PrecisionStatement> precision, Grade grade, LevelEvidence? level)
    {
        var limit = picked.Limit.Limit;
        var results = basis.SelectMany(v => v.Results).ToList();
        var mean = results.Sum(r => r.Value) / results.Count;
        var fit = PrecisionLookup.FindCautious(results.Select(r => r.State), limit.Quantity, mean, unit, precision);
        var judged = Conformity.Judge(new LimitInput
        {
            Value = mean,
            Count = results.Count,
            Minimum = picked.Limit.EffectiveMinimum,
            Maximum = picked.Limit.EffectiveMaximum,
            Digits = limit.Digits,
            Unit = limit.Unit,
            Rule = grade.Rule,
            Confidence = grade.Confidence,
            Repeatability = fit.Repeatability,
            Reproducibility = fit.Reproducibility,
            Hazy = results.Any(r => r.State.Hazy),
        });
        IReadOnlyList<ArithmeticStep> arithmetic =
        [
            .. results.SelectMany(r => r.Arithmetic),
            .. results.Count > 1 ? [MeanStep(results, mean, limit.Unit)] : Array.Empty<ArithmeticStep>(),
            .. judged.Arithmetic,
        ];
        var why = judged.Why + (fit.Reproducibility is null ? $" {fit.Why}" : "");
        return Empty(picked, why) with
        {
            Outcome = judged.Outcome,
            Value = judged.Value,
            Compared = judged.Compared,
            Margin = judged.Margin,
            ProbabilityBeyond = judged.ProbabilityBeyond,
            AcceptanceMinimum = judged.AcceptanceMinimum,
            AcceptanceMaximum = judged.AcceptanceMaximum,
            ResultsToDecide = judged.ResultsToDecide,
            Repeatability = fit.Repeatability,
            Reproducibility = fit.Reproducibility,
            Count = results.Count,
            Basis = Basis(basis, results.Count, level),
            Arithmetic = arithmetic,
        };
    }

    // Samples that disagree are not averaged: the one nearest to being beyond an edge governs.
    private static IReadOnlyList<SampleValue> Governing(PickedLimit picked, IReadOnlyList<SampleValue> values, LevelEvidence? level) =>
        level is null or { Agree: true } ? values
        : [values.MinBy(v => Margin(picked, v.Mean))!];

    private static decimal Margin(PickedLimit picked, decimal value) => Math.Min(
        picked.EffectiveMaximum - value ?? decimal.MaxValue, value - picked.EffectiveMinimum ?? decimal.MaxValue);

    private static string Basis(IReadOnlyList<SampleValue> basis, int count, LevelEvidence? level)
    {
        var numbers = string.Join(", ", basis.Select(v => $"{v.Sample.Sample.Number} ({v.Sample.Sample.Level.ToString().ToLowerInvariant()})"));
        return (count == 1 ? "one result of " : $"mean of {count} results of ") + numbers
            + (level is { Agree: not true } ? "; the sample nearest to an edge governs" : "");
    }

    private static ArithmeticStep MeanStep(IReadOnlyList<LimitResult> results, decimal mean, string unit) => new(
        "Mean of unrounded results", $"({string.Join(" + ", results.Select(r => Rounding.Plain(r.Value)))}) / {results.Count}", mean, unit,
        "ISO 4259-2");

    private static LimitEvidence Empty((PickedLimit Limit, Destination To, string Days) picked, string why)
    {
        var limit = picked.Limit.Limit;
        return new LimitEvidence
        {
            Key = limit.Key,
            Area = picked.To.Area,
            Point = picked.To.Point,
            Season = picked.Limit.Season,
            Quantity = limit.Quantity,
            Correlation = limit.Correlation,
            Unit = limit.Unit,
            Digits = limit.Digits,
            Minimum = limit.Minimum,
            Maximum = limit.Maximum,
            Allowance = picked.Limit.AllowanceGiven,
            EffectiveMinimum = picked.Limit.EffectiveMinimum,
            EffectiveMaximum = picked.Limit.EffectiveMaximum,
            Standing = limit.Standing,
            Required = limit.Required,
            Source = limit.Source,
            Status = limit.Status,
            Why = $"{picked.Limit.Why} Used {picked.Days}.",
            Outcome = Outcome.Incomplete,
            OutcomeWhy = why,
            Arithmetic = [],
        };
    }
}
