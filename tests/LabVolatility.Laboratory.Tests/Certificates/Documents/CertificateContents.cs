using LabVolatility.Laboratory.Certificates.Documents;
using static System.FormattableString;

namespace LabVolatility.Laboratory.Tests.Certificates.Documents;

/// <summary>Certificates of an invented refinery; no figure of a limit here is meant as a published one.</summary>
internal static class CertificateContents
{
    private static readonly DateTimeOffset Sampled = new(2026, 5, 10, 4, 30, 0, TimeSpan.Zero);

    public static CertificateContent Plain() => new()
    {
        LaboratoryName = "Northmere Refinery, Fuels Laboratory",
        LaboratoryPlace = "Northmere, Dock Road 4",
        TimeZone = "Europe/Prague",
        Number = "NR-26-00417",
        Revision = 1,
        IssuedAt = Sampled.AddHours(5),
        Customer = "Northmere Supply, Loading Control",
        Decision = "Released",
        CheckCode = "7H2K-9QXB-41TN",
        CheckAddress = "lab.northmere.example/certificates/check/7H2K-9QXB-41TN",
        Batch = new BatchLine
        {
            Number = "26-1042",
            Grade = "Gasoline 95, E10",
            ProductState = "finished product",
            Tank = "T-412",
            Volume = "4250 m³",
            Ethanol = new EthanolContent("9.8", "EN 13132:2000"),
        },
        Samples = [Sample("S2600417B", "running")],
        Destinations = [new("Inland terminals", "terminal", "summer, class A", new DateOnly(2026, 5, 1), new DateOnly(2026, 9, 30))],
        Results = [Result("S2600417B")],
        Limits = [Limit("S2600417B")],
        Remarks = [new("Levels", "Upper, middle and lower agreed within the method's precision before the running sample was drawn.")],
        Signature = new("Jiří Dvořák", "Shift chemist", "I release this batch on the results and limits shown.", Sampled.AddHours(5)),
    };

    /// <summary>Sixty samples with as many results and comparisons.</summary>
    public static CertificateContent Long()
    {
        List<string> numbers = [.. Enumerable.Range(1, 60).Select(n => Invariant($"S26{n:00000}X"))];
        return Plain() with
        {
            Samples = [.. numbers.Select(n => Sample(n, "upper"))],
            Results = [.. numbers.Select(Result)],
            Limits = [.. numbers.Select(Limit)],
        };
    }

    public static CertificateContent Troubled() => Plain() with
    {
        Number = "NR-26-00398",
        Revision = 2,
        Decision = "Released under concession",
        Replaces = [new("NR-26-00398", 1, "the ethanol content had been typed for another tank", Sampled.AddHours(3))],
        ReplacedBy = new("NR-26-00398", 3, "seal number corrected", Sampled.AddHours(30)),
        Withdrawal = new("Petra Nováková", "Shift chemist", Sampled.AddHours(40), "butane was added to the tank after sampling"),
        Concession = new(
            "DVPE maximum 60.0 kPa (contract)", "The buyer accepts up to 61.0 kPa for this cargo, letter of 2026-05-09.",
            "Ada Lindqvist", "Quality manager", Sampled.AddHours(4)),
        SamplesAsReceived = true,
        Batch = Plain().Batch with { Cargo = "MT Calm Harbour, before loading", Ethanol = null },
        Samples =
        [
            Sample("S2600398A", "upper") with { Condition = "hazy; cap tight, no smell" },
            Sample("S2600399C", "lower") with { ReceivedAt = null, Seal = null, Condition = null, SamplePoint = null },
        ],
        Results =
        [
            Result("S2600398A") with { Reported = "60.4", Suffix = "H", Precision = null },
            Result("S2600399C") with
            {
                ReportedBy = "Harbour Inspection, report 5518",
                Determinations =
                [
                    Result("S2600399C").Determinations[0],
                    Result("S2600399C").Determinations[0] with
                    {
                        Container = "S2600399C022", Value = "55.1", SetAsideBecause = "container found uncapped on the bench",
                    },
                ],
            },
        ],
        Limits =
        [
            Limit("S2600398A") with
            {
                Allowance = null, Effective = "60.0", Compared = "60.4", Margin = "−0.4", Standing = "contract",
                Outcome = LimitOutcome.DoesNotConform, FromMemory = true,
            },
            Limit("S2600399C") with
            {
                Rule = DecisionRuleWords.Guarded(95m, null), Outcome = LimitOutcome.NotDecided,
                Why = "the method's reproducibility is not set",
            },
            Limit("S2600399C") with
            {
                Quantity = "VP4", Compared = null, Margin = null, Method = null, Correlation = null, SampleNumbers = [],
                Outcome = LimitOutcome.Incomplete, Why = "no result by ASTM D6378",
            },
        ],
        Remarks = [new("Appearance", "Hazy at 0.5 °C; β-phase not seen. Conductivity µS ≤ 1, ground 4 Ω · řeka.")],
        Amendments =
        [
            new("Ethanol content", "9.8 % by volume", "not measured", "typed for another tank", "Petra Nováková", Sampled.AddHours(3)),
        ],
    };

    private static SampleLine Sample(string number, string level) => new()
    {
        Number = number,
        Level = level,
        SamplePoint = "T-412 gauge hatch",
        SampledAt = Sampled,
        SampledBy = "Tomáš Řezníček",
        ReceivedAt = Sampled.AddMinutes(40),
        Containers = "2 glass bottles, 1 L, 75 % full",
        Seal = "004417, intact",
        Condition = "clear and bright, 0.6 °C",
    };

    private static ResultLine Result(string sample) => new()
    {
        SampleNumber = sample,
        Quantity = "DVPE",
        Reported = "63.8",
        Unit = "kPa",
        Method = "ASTM D5191-22",
        Correlation = "DVPE = 0.965 · Ptot − 3.78 kPa",
        Precision = "R = 2.10 kPa, laboratory",
        Determinations =
        [
            new()
            {
                Container = sample[..8] + "C011",
                Value = "63.8",
                Instrument = "Tester 2",
                MeasuredAt = Sampled.AddHours(2),
                MeasuredBy = "Marie Horáková",
            },
        ],
    };

    private static LimitLine Limit(string sample) => new()
    {
        Quantity = "DVPE",
        Edge = LimitEdge.Maximum,
        Unit = "kPa",
        Base = "60.0",
        Allowance = "8.0",
        Effective = "68.0",
        Source = "Inland gasoline order 4, table 2",
        Standing = "legal",
        AppliesTo = "Inland terminals, terminal, summer",
        SampleNumbers = [sample],
        Method = "ASTM D5191-22",
        Correlation = "ASTM D5191",
        Compared = "63.8",
        Rule = DecisionRuleWords.Rounding,
        Margin = "4.2",
        Outcome = LimitOutcome.Conforms,
    };
}
