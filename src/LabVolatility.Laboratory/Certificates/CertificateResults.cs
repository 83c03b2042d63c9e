using System.Globalization;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Certificates.Documents;

namespace LabVolatility.Laboratory.Certificates;

/// <summary>The results of a batch for its certificate: per sample, quantity and correlation, at the method's resolution.</summary>
internal static class CertificateResults
{
    public static IReadOnlyList<ResultLine> Of(Evidence evidence) =>
    [
        .. CertificateText.Counting(evidence).SelectMany(sample => sample.Determinations
            .SelectMany(d => d.Results, (d, r) => (Determination: d, Result: r))
            .GroupBy(x => (x.Result.Quantity, x.Result.Correlation, x.Result.Unit, x.Determination.Method, x.Determination.Edition))
            .Select(group => Line(evidence, sample, [.. group]))
            .OfType<ResultLine>()),
    ];

    private static ResultLine? Line(
        Evidence evidence, SampleEvidence sample, IReadOnlyList<(DeterminationEvidence Determination, ResultEvidence Result)> all)
    {
        var counting = all.Where(x => x.Determination.DoesNotCount is null).ToList();
        if (counting.Count == 0 || !PressureUnits.TryParse(all[0].Result.Unit, out var unit))
            return null;
        var (determination, first) = all[0];
        var mean = counting.Sum(x => decimal.Parse(x.Result.Exact, CultureInfo.InvariantCulture)) / counting.Count;
        return new ResultLine
        {
            SampleNumber = sample.HandBlend is null ? sample.Number : $"{sample.Number}, hand blend",
            Quantity = first.Quantity,
            Reported = Rounding.Text(mean, PressureResolution.Places(unit)),
            Suffix = counting.Any(x => x.Result.Suffix.Length > 0) ? "H" : "",
            Unit = first.Unit,
            Method = CertificateText.Method(determination),
            Correlation = first.Correlation == "" ? null : first.CorrelationVersion,
            Precision = Precision(evidence, first),
            Determinations = [.. all.Select(x => new DeterminationLine
            {
                Container = x.Determination.Container.ToString(CultureInfo.InvariantCulture),
                Value = x.Result.Reported + x.Result.Suffix,
                Instrument = x.Determination.Instrument,
                MeasuredAt = x.Determination.MeasuredAt,
                MeasuredBy = x.Determination.Measurer ?? "not taken on",
                SetAsideBecause = x.Determination.DoesNotCount,
            })],
        };
    }

    private static string? Precision(Evidence evidence, ResultEvidence result)
    {
        var limit = evidence.Limits.FirstOrDefault(l =>
            l.Quantity == result.Quantity && l.Unit == result.Unit && (l.Correlation is null || l.Correlation == result.Correlation) && l.Reproducibility is not null);
        return limit is null ? null : FormattableString.Invariant($"R = {Rounding.Text(limit.Reproducibility!.Value, 2)} {limit.Unit}");
    }
}
