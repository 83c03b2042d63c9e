using System.Globalization;
using System.Text.Json;
using LabVolatility.Laboratory.Certificates.Documents;
using Xunit;
using ZXing;
using static System.FormattableString;

namespace LabVolatility.Laboratory.Tests.Certificates.Documents;

public sealed class CertificatePdfTests
{
    private static readonly Dictionary<string, CertificateContent> Contents = new()
    {
        ["plain"] = CertificateContents.Plain(),
        ["troubled"] = CertificateContents.Troubled(),
        ["long"] = CertificateContents.Long(),
    };

    private static readonly string PlainText = Text(CertificateContents.Plain());
    private static readonly string TroubledText = Text(CertificateContents.Troubled());

    public static TheoryData<string> Names => [.. Contents.Keys];

    [Theory]
    [InlineData("Certificate of volatility")]
    [InlineData("Northmere Refinery, Fuels Laboratory, Northmere, Dock Road 4")]
    [InlineData("Check code 7H2K-9QXB-41TN")]
    [InlineData("lab.northmere.example/certificates/check/7H2K-9QXB-41TN")]
    [InlineData("26-1042")]
    [InlineData("Gasoline 95, E10")]
    [InlineData("finished product")]
    [InlineData("T-412")]
    [InlineData("4250 m³")]
    [InlineData("9.8 % by volume, measured by EN 13132:2000")]
    [InlineData("Inland terminals terminal summer, class A 2026-05-01 to 2026-09-30")]
    [InlineData("S2600417B running")]
    [InlineData("Tomáš Řezníček")]
    [InlineData("2026-05-10 07:10")]
    [InlineData("Seal: 004417, intact")]
    [InlineData("clear and bright, 0.6 °C")]
    [InlineData("DVPE S2600417B 63.8 kPa ASTM D5191-22")]
    [InlineData("DVPE = 0.965 · Ptot − 3.78 kPa")]
    [InlineData("1 of 1 used")]
    [InlineData("S2600417C011 63.8 kPa Tester 2 2026-05-10 08:30 Marie Horáková Used")]
    [InlineData("60.0 + 8.0 =")]
    [InlineData("conforms to the maximum of 68.0 kPa of Inland gasoline order 4, table 2")]
    [InlineData("simple acceptance after rounding (ASTM E29, rounding method)")]
    [InlineData("ISO/IEC 17025:2017, 7.8.6.2")]
    [InlineData("relate only to the samples named")]
    [InlineData("supports, and does not replace, a competent person's judgement. Local codes, site rules and authorised practice come first.")]
    [InlineData("Jiří Dvořák")]
    [InlineData("Shift chemist")]
    [InlineData("2026-05-10 11:30 +02:00")]
    [InlineData("All times: Europe/Prague")]
    public void Write_Plain_SaysWhatItMust(string words) => Assert.Contains(words, PlainText, StringComparison.Ordinal);

    [Theory]
    [InlineData("WITHDRAWN: THIS CERTIFICATE IS NO LONGER IN FORCE Withdrawn 2026-05-11 22:30 +02:00 (Europe/Prague) by Petra Nováková")]
    [InlineData("butane was added to the tank after sampling")]
    [InlineData("Replaced by certificate NR-26-00398, revision 3")]
    [InlineData("RELEASED UNDER CONCESSION Limit concerned: DVPE maximum 60.0 kPa (contract).")]
    [InlineData("This certificate replaces NR-26-00398, revision 1")]
    [InlineData("not measured")]
    [InlineData("60.4H")]
    [InlineData("Reported by Harbour Inspection, report 5518")]
    [InlineData("1 of 2 used")]
    [InlineData("Set aside: container found uncapped on the bench")]
    [InlineData("yet confirmed by the laboratory.")]
    [InlineData("does not conform to the maximum of 60.0 kPa")]
    [InlineData("guarded acceptance at 95 % confidence (ISO 4259-2), reproducibility not set")]
    [InlineData("no result that may answer the maximum")]
    [InlineData("the results apply to the samples as received")]
    [InlineData("Ethanol content 9.8 % by volume not measured typed for another tank Petra Nováková")]
    [InlineData("Hazy at 0.5 °C; β-phase not seen. Conductivity µS ≤ 1, ground 4 Ω · řeka.")]
    [InlineData("Condition: not recorded")]
    [InlineData("Why: the method's")]
    public void Write_Troubled_SaysWhatItMust(string words) => Assert.Contains(words, TroubledText, StringComparison.Ordinal);

    [Theory, MemberData(nameof(Names))]
    public void Write_EachPage_NumberedAndEndsOnce(string name)
    {
        var content = Contents[name];

        var pages = PdfReading.Texts(CertificatePdf.Write(content));

        for (var page = 0; page < pages.Count; page++)
        {
            Assert.Contains(Invariant($"Certificate {content.Number}, revision {content.Revision}"), pages[page], StringComparison.Ordinal);
            Assert.Contains(Invariant($"Page {page + 1} of {pages.Count}"), pages[page], StringComparison.Ordinal);
            Assert.Contains(content.LaboratoryName, pages[page], StringComparison.Ordinal);
            Assert.Equal(page == pages.Count - 1, pages[page].Contains("End of certificate", StringComparison.Ordinal));
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void Write_AnyContent_StaysWithinTheMargins(string name)
    {
        var boxes = PdfReading.Pages(CertificatePdf.Write(Contents[name]), page => page.Letters.Select(l => l.BoundingBox).ToList());

        Assert.All(boxes.SelectMany(b => b), box => Assert.True(
            box.Left > 50 && box.Right < 546 && box.Bottom > 24 && box.Top < 812, box.ToString()));
    }

    [Fact]
    public void Write_SixtySamples_HeadsRepeatedAndNoRowLost()
    {
        var content = CertificateContents.Long();

        var pages = PdfReading.Texts(CertificatePdf.Write(content));

        Assert.True(pages.Count > 3);
        Assert.All(content.Samples, s => Assert.Single(pages, p => p.Contains(s.Number + " upper", StringComparison.Ordinal)));
        AssertHeaded(pages, " upper 2026-05-10", "Seal and condition", atLeast: 3);
        AssertHeaded(pages, "Tester 2", "Instrument Measured at", atLeast: 2);
        AssertHeaded(pages, "4.2 kPa", "Effective limit Source and standing", atLeast: 3);
    }

    [Fact]
    public void Write_RemarkLongerThanAPage_NoWordLost()
    {
        var words = Enumerable.Range(1, 3000).Select(n => Invariant($"w{n:0000}")).ToList();
        var content = CertificateContents.Plain() with { Remarks = [new("Handling", string.Join(' ', words))] };

        var text = Text(content);

        Assert.All(words, word => Assert.Contains(word, text, StringComparison.Ordinal));
    }

    [Fact]
    public void Write_Codes_AreReadByAScanner()
    {
        var content = CertificateContents.Plain();

        var (bars, square) = PdfReading.Pages(CertificatePdf.Write(content), page => (
            PdfReading.Code(page, BarcodeFormat.CODE_128, 30, 95, 200, 40),
            PdfReading.Code(page, BarcodeFormat.QR_CODE, 455, 45, 100, 100)))[0];

        Assert.Equal(content.Number, bars);
        Assert.Equal(content.CheckAddress, square);
    }

    [Fact]
    public void Write_ConcessionAlone_SaidOnEachPage()
    {
        var content = CertificateContents.Long() with { Concession = CertificateContents.Troubled().Concession };

        var pages = PdfReading.Texts(CertificatePdf.Write(content));

        Assert.All(pages, page => Assert.Contains("RELEASED UNDER CONCESSION", page, StringComparison.Ordinal));
    }

    [Fact]
    public void Write_SupersededAlone_SaidOnEachPage()
    {
        var content = CertificateContents.Long() with { ReplacedBy = CertificateContents.Troubled().ReplacedBy };

        var pages = PdfReading.Texts(CertificatePdf.Write(content));

        Assert.All(pages, page => Assert.Contains("SUPERSEDED", page, StringComparison.Ordinal));
    }

    [Theory, MemberData(nameof(Names))]
    public void Write_FromStoredJson_SaysTheSame(string name)
    {
        var content = Contents[name];

        var stored = JsonSerializer.Deserialize<CertificateContent>(JsonSerializer.Serialize(content))!;

        Assert.Equal(PdfReading.Texts(CertificatePdf.Write(content)), PdfReading.Texts(CertificatePdf.Write(stored)));
    }

    [Theory]
    [InlineData("cs-CZ")]
    [InlineData("ar-SA")]
    [InlineData("th-TH")]
    public void Write_AnotherCulture_SaysTheSame(string culture)
    {
        var before = CultureInfo.CurrentCulture;
        var expected = PdfReading.Texts(CertificatePdf.Write(CertificateContents.Troubled()));
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo(culture);

            Assert.Equal(expected, PdfReading.Texts(CertificatePdf.Write(CertificateContents.Troubled())));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Write_NoClock_CreatedWhenIssued()
    {
        var content = CertificateContents.Plain();

        using var document = UglyToad.PdfPig.PdfDocument.Open(CertificatePdf.Write(content));

        Assert.Equal(content.IssuedAt, document.Information.GetCreatedDateTimeOffset());
    }

    [Fact]
    public void Write_UnknownZone_Throws() => Assert.Throws<TimeZoneNotFoundException>(
        () => CertificatePdf.Write(CertificateContents.Plain() with { TimeZone = "Northmere/Docks" }));

    private static string Text(CertificateContent content) =>
        string.Join(' ', PdfReading.Texts(CertificatePdf.Write(content)));

    private static void AssertHeaded(IReadOnlyList<string> pages, string inRow, string inHead, int atLeast)
    {
        var reached = pages.Where(p => p.Contains(inRow, StringComparison.Ordinal)).ToList();
        Assert.True(reached.Count >= atLeast, $"{inRow}: {reached.Count} pages");
        Assert.All(reached, page => Assert.Contains(inHead, page, StringComparison.Ordinal));
    }
}
