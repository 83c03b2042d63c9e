using LabVolatility.Core.Limits;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Certificates.Documents;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Setup;

namespace LabVolatility.Laboratory.Certificates;

/// <summary>From frozen evidence and a signed decision to what stands on the certificate.</summary>
internal static class CertificateText
{
    public static CertificateContent Of(
        LaboratorySettings settings, Evidence evidence, Decision decision, IReadOnlyList<AmendmentLine> amendments,
        ReplacedCertificate? replaces, string number, int revision, string checkCode, DateTimeOffset issuedAt) => new()
        {
            LaboratoryName = settings.Name,
            LaboratoryPlace = settings.Place,
            TimeZone = settings.TimeZone,
            Number = number,
            Revision = revision,
            IssuedAt = issuedAt,
            Decision = Capital(DecisionWords.State(decision.Kind)),
            CheckCode = checkCode,
            CheckAddress = CertificateFiling.CheckAddress(settings, checkCode),
            Replaces = replaces is null ? [] : [replaces],
            Concession = decision.Kind == DecisionKind.Concession ? Concession(evidence, decision) : null,
            Batch = new BatchLine
            {
                Number = evidence.Batch,
                Grade = evidence.GradeName,
                ProductState = State(evidence.State),
                Tank = evidence.Tank,
                Volume = Volume(evidence),
                Ethanol = evidence is { EthanolPercent: { } ethanol, EthanolMethod: { } method } ? new EthanolContent(Rounding.Plain(ethanol), method) : null,
            },
            Samples = [.. Counting(evidence).Select(Line)],
            SamplesAsReceived = evidence.Samples.Any(s => s.Verdict == ReceiptVerdict.ProceedWithDisclaimer),
            Destinations = [.. evidence.Destinations.Select(d => new DestinationLine(
                d.Area, d.Point.Text(), Season(evidence, d), evidence.From, evidence.Until))],
            Results = CertificateResults.Of(evidence),
            Limits = CertificateLimits.Of(evidence),
            Remarks = Remarks(evidence),
            Amendments = amendments,
            Signature = new SignatureLine(decision.PersonName, decision.PersonRoles, decision.Meaning, decision.At),
        };

    internal static IEnumerable<SampleEvidence> Counting(Evidence evidence) =>
        evidence.Samples.Where(s => s.Void is null && s.State == SampleState.Received);

    private static string Season(Evidence evidence, Destination to)
    {
        var seasons = evidence.Limits.Where(l => l.Area == to.Area && l.Point == to.Point && l.Season is not null).Select(l => l.Season!).Distinct().ToList();
        return seasons.Count == 0 ? "all the year" : string.Join(", ", seasons);
    }

    private static SampleLine Line(SampleEvidence sample) => new()
    {
        Number = sample.Number,
        Level = sample.Level.ToString().ToLowerInvariant(),
        SamplePoint = sample.SamplePoint,
        SampledAt = sample.SampledAt,
        SampledBy = sample.SampledBy,
        ReceivedAt = sample.ReceivedAt,
        Containers = string.Join("; ", sample.Containers.GroupBy(c => (c.Kind, c.Millilitres)).Select(g =>
            $"{g.Count()} {g.Key.Kind.Replace('-', ' ')}, {Rounding.Plain(g.Key.Millilitres)} mL")),
        Seal = string.Join("; ", sample.Containers.Select(c => c.Seal).OfType<string>().Distinct()) is { Length: > 0 } seals ? seals : null,
        Condition = sample.Verdict == ReceiptVerdict.AsExpected ? "as expected" : sample.VerdictNote,
    };

    internal static string? Volume(Evidence evidence) => evidence.CubicMetres is { } volume ? $"{Rounding.Plain(volume)} m³" : null;

    /// <summary>"EN 13016-1:2024", "ASTM D5191-22".</summary>
    internal static string Method(DeterminationEvidence determination) =>
        determination.Method + (determination.Method.StartsWith("ASTM", StringComparison.Ordinal) ? "-" : ":") + determination.Edition;

    internal static ConcessionNotice Concession(Evidence evidence, Decision decision) => new(
        string.Join("; ", evidence.Limits.Where(l => l.Required && l.Outcome != Core.Limits.Outcome.Conforms).Select(CertificateLimits.Words)),
        decision.Reason ?? "", decision.PersonName, decision.PersonRoles, decision.At);

    private static List<RemarkLine> Remarks(Evidence evidence)
    {
        var remarks = new List<RemarkLine>();
        remarks.AddRange(evidence.Levels.Select(l => new RemarkLine("Levels", l.Why)));
        remarks.AddRange(Counting(evidence).Where(s => s.Verdict == ReceiptVerdict.ProceedWithDisclaimer)
            .Select(s => new RemarkLine("As received", $"Sample {s.Number}: {s.VerdictNote}")));
        remarks.AddRange(Counting(evidence).SelectMany(s => s.Determinations.Where(d => d.DoesNotCount is null).SelectMany(d => d.Findings
            .Select(f => new RemarkLine("Finding", $"Sample {s.Number}, container {d.Container}: {f.Message}")))));
        remarks.AddRange(evidence.Samples.Where(s => s.Void is not null).Select(s => new RemarkLine("Not used", $"Sample {s.Number} is {s.Void}.")));
        remarks.AddRange(evidence.Remarks.Select(r => new RemarkLine("Limits", r)));
        return remarks;
    }

    private static string State(ProductState state) => state switch
    {
        ProductState.Finished => "finished product",
        ProductState.Blendstock => "blendstock for blending with ethanol",
        ProductState.HandBlend => "hand blend",
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "No such state."),
    };

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
