using LabVolatility.Core.Assessment;
using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Bench;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Finds what may answer a limit: right quantity, right correlation, right method, reported.</summary>
internal static class SampleValues
{
    public static IReadOnlyList<SampleValue> Of(Limit limit, PressureUnit unit, IReadOnlyList<AssessedSample> samples)
    {
        var answers = samples.Where(s => s.Counts)
            .Select(s => new SampleValue(s, [.. s.Used.Select(d => Value(limit, unit, d)).OfType<LimitResult>()]))
            .Where(v => v.Results.Count > 0).ToList();
        // Results of two methods make no mean: the one that decides a dispute counts, else the one named first.
        var method = answers.SelectMany(v => v.Results).Select(r => r.State.Method).Distinct()
            .OrderBy(m => m == limit.RefereeMethod ? 0 : 1).ThenBy(m => limit.Methods.ToList().IndexOf(m))
            .ThenBy(m => m, StringComparer.Ordinal).FirstOrDefault();
        return
        [
            .. answers.Select(v => v with { Results = [.. v.Results.Where(r => r.State.Method == method)] })
                .Where(v => v.Results.Count > 0),
        ];
    }

    /// <summary>Why nothing answers the limit, in words.</summary>
    public static string WhyNone(Limit limit, IReadOnlyList<AssessedSample> samples)
    {
        var other = samples.Where(s => s.Counts).SelectMany(s => s.Used).SelectMany(d => d.Results)
            .Where(r => r.Quantity is "DVPE" or "RVP").Select(r => $"{r.Quantity} ({r.Correlation})").Distinct().ToList();
        var wanted = $"{limit.Quantity}{(limit.Correlation is null ? "" : $" by the equation of {limit.Correlation}")}"
            + (limit.Methods.Count == 0 ? "" : $" from {string.Join(" or ", limit.Methods)}");
        return other.Count == 0
            ? $"There is no result yet; the limit asks for {wanted}."
            : $"The limit asks for {wanted}; {string.Join(", ", other)} does not answer it.";
    }

    // Order of the arithmetic: reading to the limit's unit, then the correlation in that unit's constants, not rounded.
    private static LimitResult? Value(Limit limit, PressureUnit unit, DeterminationState d)
    {
        var reported = d.Results.FirstOrDefault(r => LimitAnswer.Refusal(
            limit, new MeasuredResult(r.Quantity, r.Value, r.Unit, d.Method, r.Correlation)) is null);
        if (reported is null || (Correlations.Named(reported.Correlation) ?? d.OwnCorrelation) is not { } correlation || !TestMethods.TryFind(d.Method, out var method))
            return null;
        var container = Volume.From(d.ContainerMillilitres, VolumeUnit.Millilitre);
        return Measurement.ResultInUnit(method, d.Quantities, container, correlation, unit) is { } result
            ? new LimitResult(d, result.Value, result.Arithmetic)
            : null;
    }
}
