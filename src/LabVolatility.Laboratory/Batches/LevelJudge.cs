using LabVolatility.Core.Limits;
using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Holds the samples of a batch against each other: the levels of its tank.</summary>
/// <remarks>The largest difference is held against the method's repeatability: common practice.</remarks>
internal static class LevelJudge
{
    public static LevelEvidence? Judge(
        Limit limit, PressureUnit unit, IReadOnlyList<SampleValue> values, IReadOnlyList<PrecisionStatement> precision)
    {
        // Two samples of one level are held against each other likewise: a second one must not hide the first in a mean.
        if (values.Count < 2)
            return null;
        var spread = values.Max(v => v.Mean) - values.Min(v => v.Mean);
        var fit = PrecisionLookup.FindCautious(
            values.SelectMany(v => v.Results).Select(r => r.State), limit.Quantity, values.Average(v => v.Mean), unit, precision);
        bool? agree = fit.Repeatability is { } r ? spread <= r : null;
        var what = values.Select(v => v.Sample.Sample.Level).Distinct().Count() > 1 ? "levels" : "samples";
        var found = $"The {what} differ by {Rounding.Text(spread, 2)} {limit.Unit}";
        var why = agree switch
        {
            true => $"{found}, within r = {Rounding.Text(fit.Repeatability!.Value, 2)} {limit.Unit}: the tank is homogeneous.",
            false => $"{found}, more than r = {Rounding.Text(fit.Repeatability!.Value, 2)} {limit.Unit}: the tank is not homogeneous. Mix and resample, or the worst of them governs.",
            null => $"{found}; whether that is too much can't be judged. {fit.Why} The worst of them governs.",
        };
        if (values.FirstOrDefault(v => values.Any(o => o.Sample.Sample.Number == v.Sample.Evidence.ResampleOf)) is { } again)
            why += $" {again.Sample.Sample.Number} was drawn again for {again.Sample.Evidence.ResampleOf}, which is neither void nor set aside: both count.";
        return new LevelEvidence(
            limit.Quantity, limit.Unit,
            [.. values.Select(v => new LevelValue(v.Sample.Sample.Level.ToString().ToLowerInvariant(), v.Sample.Sample.Number, v.Mean))],
            spread, fit.Repeatability, agree, why);
    }
}
