using System.Globalization;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Precision;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Turns samples and determinations into evidence.</summary>
internal static class SampleText
{
    public static SampleEvidence Of(
        Sample sample, string? resampleOf, IReadOnlyList<DeterminationState> determinations, string? voidReason,
        IReadOnlyList<DuplicateVerdict> verdicts, bool usable, InstrumentDays instruments)
    {
        var retained = RetainedPortion.Of(sample)?.Id;
        return new SampleEvidence
        {
            Number = sample.Number,
            Level = sample.Level,
            State = sample.State,
            SamplePoint = sample.SamplePointCode,
            SampledAt = sample.SampledAt,
            SampledBy = sample.SampledBy,
            ReceivedAt = sample.ReceivedAt,
            Verdict = sample.Verdict,
            VerdictNote = sample.VerdictNote,
            ResampleOf = resampleOf,
            Void = voidReason,
            Containers = [.. sample.Containers.OrderBy(c => c.Number).Select(c => new ContainerEvidence(
                c.Number, c.Kind.Text(), c.VolumeMillilitres, c.FillPercent, c.TemperatureTyped, c.Seal, c.SealIntact,
                c.Openings.Count, c.Id == retained))],
            Determinations = [.. determinations.Select(d => Of(d, instruments))],
            Duplicates = verdicts.Count == 0 ? null : string.Join(" ", verdicts.Select(v => v.Why)),
            Usable = usable,
        };
    }

    private static DeterminationEvidence Of(DeterminationState d, InstrumentDays instruments) => new()
    {
        Id = d.Id,
        Container = d.ContainerNumber,
        Method = d.Method,
        Edition = d.Edition,
        Instrument = d.Instrument,
        InstrumentState = instruments.Text(d),
        MeasuredAt = d.MeasuredAt,
        MeasurerId = d.MeasurerId,
        Measurer = d.Measurer,
        Hands = [.. d.Revisions.Select(r => r.By).Append(d.MeasurerId ?? Guid.Empty).Where(id => id != Guid.Empty).Distinct().Order()],
        Revision = d.Current.Revision,
        AmendedBecause = d.Current.Revision > 1 ? d.Current.Reason : null,
        DoesNotCount = d.DoesNotCount,
        Readings = d.Current.Readings,
        Handling = d.Current.Handling,
        Findings = d.Current.Findings,
        Results = [.. d.Results.Select(Of)],
    };

    private static ResultEvidence Of(Result r) => new(
        r.Quantity, r.Exact, r.Reported, r.Unit, r.Suffix, r.Correlation, r.CorrelationVersion, r.Equation, r.Source, r.Status, r.Arithmetic);

    internal static decimal Exact(Result r) => decimal.Parse(r.Exact, CultureInfo.InvariantCulture);
}
