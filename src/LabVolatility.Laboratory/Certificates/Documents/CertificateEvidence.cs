using static System.FormattableString;

namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>Samples, results and the determinations that they rest on.</summary>
internal static class CertificateEvidence
{
    private const string NotRecorded = "not recorded";

    public static void Write(PageFlow flow, CertificateContent content, LocalTimes times)
    {
        flow.Heading("Samples");
        TableWriter.Write(
            flow,
            [
                new("Sample", 2.1), new("Level and point", 2.2), new("Sampled", 2.6), new("Received", 2.1),
                new("Containers", 2), new("Seal and condition", 3.6),
            ],
            content.Samples.Select(sample => Sample(sample, times)));

        flow.Heading("Results");
        TableWriter.Write(
            flow,
            [
                new("Quantity", 1.2), new("Sample", 1.5), new("Reported", 1.3, RightAligned: true), new("Unit", 0.9),
                new("Test method, correlation", 3.8), new("Determinations", 1.7), new("Precision", 1.9),
            ],
            content.Results.Select(Result));

        var determinations = content.Results.SelectMany(r => r.Determinations, (result, run) => (result, run)).ToList();
        if (determinations.Count == 0)
            return;
        flow.Heading("Determinations");
        TableWriter.Write(
            flow,
            [
                new("Quantity, sample", 2.5), new("Container", 2.1), new("Value", 1.3, RightAligned: true),
                new("Instrument", 1.8), new("Measured at", 2.1), new("Measured by", 2), new("Use", 2.3),
            ],
            determinations.Select(d => Determination(d.result, d.run, times)));
    }

    private static IReadOnlyList<TableCell> Sample(SampleLine sample, LocalTimes times) =>
    [
        new(sample.Number, Bold: true),
        TableCell.Of(sample.Level, sample.SamplePoint),
        TableCell.Of(times.At(sample.SampledAt), sample.SampledBy),
        sample.ReceivedAt is { } received ? times.At(received) : NotRecorded,
        sample.Containers ?? NotRecorded,
        TableCell.Of("Seal: " + (sample.Seal ?? NotRecorded), sample.Condition ?? "Condition: " + NotRecorded),
    ];

    private static IReadOnlyList<TableCell> Result(ResultLine result)
    {
        var used = result.Determinations.Count(d => d.SetAsideBecause is null);
        return
        [
            new(result.Quantity, Bold: true),
            result.SampleNumber,
            new(result.Reported + result.Suffix, Bold: true),
            result.Unit,
            TableCell.Of(
                result.Method,
                result.Correlation,
                result.ReportedBy is null ? null : "Reported by " + result.ReportedBy),
            result.Determinations.Count == 0 ? NotRecorded : Invariant($"{used} of {result.Determinations.Count} used"),
            result.Precision ?? "not set",
        ];
    }

    private static IReadOnlyList<TableCell> Determination(ResultLine result, DeterminationLine run, LocalTimes times) =>
    [
        $"{result.Quantity}, {result.SampleNumber}",
        run.Container,
        $"{run.Value} {result.Unit}",
        run.Instrument,
        times.At(run.MeasuredAt),
        run.MeasuredBy,
        run.SetAsideBecause is { } cause ? "Set aside: " + cause : "Used",
    ];
}
