using LabVolatility.Core.Limits;
using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Holds the levels of a tank against each other.</summary>
/// <remarks>The largest difference is held against the method's repeatability: common practice.</remarks>
internal static class LevelJudge
{
    public static LevelEvidence? Judge(
        Limit limit, PressureUnit unit, IReadOnlyList<SampleValue> values, IReadOnlyList<PrecisionStatement> precision)
    {
        var levels = values.Where(v => v.Sample.Sample.Level is SampleLevel.Upper or SampleLevel.Middle or SampleLevel.Lower).ToList();
        if (levels.Select(v => v.Sample.Sample.Level).Distinct().Count() < 2)
            return null;
        var spread = levels.Max(v => v.Mean) - levels.Min(v => v.Mean);
        var state = levels.SelectMany(v => v.Results).Select(r => r.State).OrderBy(s => s.Hazy ? 0 : 1).First();
        var fit = PrecisionLookup.Find(state, limit.Quantity, levels.Average(v => v.Mean), unit, precision);
        bool? agree = fit.Repeatability is { } r ? spread <= r : null;
        var found = $"The levels differ by {Rounding.Text(spread, 2)} {limit.Unit}";
        var why = agree switch
        {
            true => $"{found}, within r = {Rounding.Text(fit.Repeatability!.Value, 2)} {limit.Unit}: the tank is homogeneous.",
            false => $"{found}, more than r = {Rounding.Text(fit.Repeatability!.Value, 2)} {limit.Unit}: the tank is not homogeneous. Mix and resample, or the worst level governs.",
            null => $"{found}; whether that is too much can't be judged. {fit.Why} The worst level governs.",
        };
        return new LevelEvidence(
            limit.Quantity, limit.Unit,
            [.. levels.Select(v => new LevelValue(v.Sample.Sample.Level.ToString().ToLowerInvariant(), v.Sample.Sample.Number, v.Mean))],
            spread, fit.Repeatability, agree, why);
    }
}
