using LabVolatility.Laboratory.Certificates.Documents;
using LabVolatility.Laboratory.Samples;
using Xunit;
using ZXing;

namespace LabVolatility.Laboratory.Tests.Certificates.Documents;

public sealed class LabelPdfTests
{
    private static readonly string Sample = ScanCode.ForSample(2026, 417);

    [Fact]
    public void Write_TwoContainers_OneLabelAPage()
    {
        var sizes = PdfReading.Pages(LabelPdf.Write([Label(1), Label(2)]), page => (page.Width, page.Height));

        Assert.Equal(2, sizes.Count);
        Assert.All(sizes, size => Assert.Equal(90 / 25.4 * 72, size.Width, 0.1));
        Assert.All(sizes, size => Assert.Equal(38 / 25.4 * 72, size.Height, 0.1));
    }

    [Fact]
    public void Write_Label_SaysWhatItMust()
    {
        var text = PdfReading.Texts(LabelPdf.Write([Label(2)]))[0];

        Assert.All(
            [
                ScanCode.ForContainer(Sample, 2), "Container 2 of 3", "Sample " + Sample, "Gasoline 95, E10",
                "T-412 · running · gauge hatch", "Sampled 2026-05-10 06:30 +02:00 (Europe/Prague)",
                "DANGER: extremely flammable liquid and vapour.", "Keep cool and upright. Fill 70–80 %.", "Northmere Refinery",
            ],
            words => Assert.Contains(words, text, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(42)]
    [InlineData(99)]
    public void Write_Bars_AreReadByAScanner(int container)
    {
        var pdf = LabelPdf.Write([Label(container)]);

        var read = PdfReading.Pages(pdf, page => PdfReading.Code(page, BarcodeFormat.CODE_128, 0, 0, page.Width, 45))[0];

        Assert.Equal(ScanCode.ForContainer(Sample, container), read);
    }

    [Fact]
    public void Write_LongWords_StayOnTheLabel()
    {
        var wide = string.Concat(Enumerable.Repeat("Wintergrade for export only ", 8));
        var label = Label(1) with { Grade = wide, SamplePoint = wide, LaboratoryName = wide, ContainerCount = 99 };

        var letters = PdfReading.Pages(LabelPdf.Write([label]), page => page.Letters.Select(l => l.BoundingBox).ToList())[0];

        Assert.All(letters, box => Assert.True(box.Left > 0 && box.Right < 255 && box.Bottom > 0 && box.Top < 108, box.ToString()));
    }

    [Fact]
    public void Write_LongHazard_RefusedNotShortened()
    {
        var label = Label(1) with { Hazard = string.Concat(Enumerable.Repeat("keep away from every flame ", 9)) };

        Assert.Throws<ArgumentException>(() => LabelPdf.Write([label]));
    }

    [Fact]
    public void Write_NoLabel_Throws() => Assert.Throws<ArgumentException>(() => LabelPdf.Write([]));

    private static LabelContent Label(int container) => new()
    {
        LaboratoryName = "Northmere Refinery, Fuels Laboratory",
        ContainerCode = ScanCode.ForContainer(Sample, container),
        SampleNumber = Sample,
        Grade = "Gasoline 95, E10",
        Tank = "T-412",
        SamplePoint = "gauge hatch",
        Level = "running",
        SampledAt = new DateTimeOffset(2026, 5, 10, 4, 30, 0, TimeSpan.Zero),
        TimeZone = "Europe/Prague",
        ContainerNumber = container,
        ContainerCount = 3,
    };
}
