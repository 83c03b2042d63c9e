using LabVolatility.Laboratory.Certificates;
using LabVolatility.Laboratory.Certificates.Documents;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Batches;
using LabVolatility.Laboratory.Tests.Certificates.Documents;
using LabVolatility.Laboratory.Tests.Storage;
using Xunit;
using ZXing;

namespace LabVolatility.Laboratory.Tests.Certificates;

/// <summary>The paper of a cargo, read back.</summary>
public sealed class CargoPaperTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Paper_TwoTanks_StatesEachAndNoMean(StorageEngine engine)
    {
        await using var lab = await GasolineLab.Create(engine);
        var (first, second) = await CargoLab.TwoReleased(lab);

        var issued = await CargoLab.Issued(lab, first, second);

        var pdf = (await new ReadCertificates(lab.Open).ByNumber(issued.Number, null, Cancel))!.Pdf;
        var text = string.Join(' ', PdfReading.Texts(pdf));
        Assert.All(
            [
                "Cargo certificate of volatility", "MT Havørn", "26-17", "Jetty 2", "before loading", "nomination 5512", first, second, "T-101", "T-102",
                "DVPE 58.9 kPa", "DVPE 55.1 kPa", "EN 13016-1:2024", "60.0 kPa", "45.0 kPa", "(running)", "Tomas Lind", issued.CheckCode,
                "No mean over the tanks is formed", "commingled cargo", "does not replace, a competent person's judgement", "End of certificate",
            ],
            words => Assert.Contains(words, text, StringComparison.Ordinal));
        // The mean of 58.945 and 55.085 kPa.
        Assert.DoesNotContain("57.0", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Paper_ManyTanks_NumbersItsPagesAndRepeatsTheHead()
    {
        var tanks = Enumerable.Range(1, 24).Select(n => Tank($"T-{n:000}")).ToList();

        var pages = PdfReading.Texts(CargoPdf.Write(Content(tanks)));

        Assert.True(pages.Count >= 3);
        Assert.All(pages.Index(), page =>
        {
            Assert.Contains($"Page {page.Index + 1} of {pages.Count}", page.Item, StringComparison.Ordinal);
            Assert.Contains("Cargo certificate C2600042, revision 2", page.Item, StringComparison.Ordinal);
        });
        Assert.All(tanks, tank => Assert.Contains(pages, page => page.Contains(tank.Tank, StringComparison.Ordinal)));
        Assert.Contains("Effective limit", pages[^2], StringComparison.Ordinal);
    }

    [Fact]
    public void Paper_Revision_SaysWhatItReplacesAndWhichConcessionItRestsOn()
    {
        var concession = new ConcessionNotice("DVPE maximum 58.0 kPa (contract)", "the customer accepts 59.0 kPa", "Kari Moe", "quality manager", At);

        var text = string.Join(' ', PdfReading.Texts(CargoPdf.Write(Content([Tank("T-101") with { Concession = concession }]) )));

        Assert.All(
            [
                "REPLACES AN EARLIER CERTIFICATE", "replaces C2600042, revision 1", "the berth was wrong", "TANK T-101: RELEASED UNDER CONCESSION",
                "DVPE maximum 58.0 kPa (contract)", "Kari Moe",
            ],
            words => Assert.Contains(words, text, StringComparison.Ordinal));
    }

    [Fact]
    public void Paper_Codes_AreReadByAScanner()
    {
        var codes = PdfReading.Pages(CargoPdf.Write(Content([Tank("T-101")])), page => (
            Bars: PdfReading.Code(page, BarcodeFormat.CODE_128, 36, 98, 200, 34),
            Square: PdfReading.Code(page, BarcodeFormat.QR_CODE, 455, 45, 100, 100)))[0];

        Assert.Equal(("C2600042", "https://lab.example/certificates/check/7H2K-9QXB-41TN"), codes);
    }

    private static DateTimeOffset At => new(2026, 5, 4, 8, 0, 0, TimeSpan.Zero);

    private static CargoContent Content(IReadOnlyList<CargoTankLine> tanks) => new()
    {
        LaboratoryName = "Fjordvik laboratory",
        TimeZone = "Europe/Oslo",
        Number = "C2600042",
        Revision = 2,
        IssuedAt = At,
        CheckCode = "7H2K-9QXB-41TN",
        CheckAddress = "https://lab.example/certificates/check/7H2K-9QXB-41TN",
        Replaces = new ReplacedCertificate("C2600042", 1, "the berth was wrong", At.AddHours(-1)),
        Ship = "MT Havørn",
        Voyage = "26-17",
        Port = "Fjordvik",
        Stage = "after loading",
        Product = "Gasoline 95",
        Tanks = tanks,
        Signature = new SignatureLine("Tomas Lind", "shift chemist", "I certify the vapour pressure of the shore tanks named.", At),
    };

    private static CargoTankLine Tank(string code) => new()
    {
        Tank = code,
        Batch = $"B-{code}",
        Grade = "Gasoline 95",
        Volume = "4250 m³",
        Decision = "released",
        DecidedBy = "Tomas Lind",
        DecidedAt = At,
        Quantity = "DVPE",
        Reported = "58.9",
        Unit = "kPa",
        Method = "EN 13016-1:2024",
        Samples = [new CargoSampleLine("S2600001A", "upper", At.AddHours(-3)), new CargoSampleLine("S2600002B", "lower", At.AddHours(-3))],
        MeasuredAt = At.AddHours(-1),
        Limits =
        [
            new LimitLine
            {
                Quantity = "DVPE",
                Edge = LimitEdge.Maximum,
                Unit = "kPa",
                Base = "60.0",
                Effective = "60.0",
                Source = "EN 228:2012+A1:2017, Table 3",
                Standing = "contract",
                AppliesTo = "EN228-A, terminal",
                Compared = "58.9",
                Rule = DecisionRuleWords.Rounding,
                Margin = "1.1",
                Outcome = LimitOutcome.Conforms,
            },
        ],
    };
}
