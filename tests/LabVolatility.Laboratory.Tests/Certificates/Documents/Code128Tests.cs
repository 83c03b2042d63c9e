using LabVolatility.Laboratory.Certificates.Documents;
using Xunit;
using ZXing;
using ZXing.Common;

namespace LabVolatility.Laboratory.Tests.Certificates.Documents;

public sealed class Code128Tests
{
    private const int Quiet = 10;
    private const int PixelsPerModule = 3;

    public static TheoryData<string> Texts =>
    [
        .. Enumerable.Range(' ', '~' - ' ' + 1).Select(c => $"a{(char)c}b"),
        .. Enumerable.Range(0, 100).Select(n => $"{n:00}{n:00}"),
        "1", "12", "123", "12345", "123456", "1234567", "A1234", "A12345", "A123456", "A1234567B", "A123456B12", "12AB1234",
        "S2600417C011", "NR-26-00417",
    ];

    [Theory, MemberData(nameof(Texts))]
    public void Modules_AnyText_IsReadBack(string text) => Assert.Equal(text, Decode(Code128.Modules(text)));

    [Fact]
    public void Modules_EightDigits_TakeHalfTheSymbols() =>
        Assert.Equal(11 * 6 + 13, Code128.Modules("12345678").Count);

    [Theory]
    [InlineData("")]
    [InlineData("é")]
    [InlineData("A\tB")]
    public void Modules_NotPrintableAscii_Throws(string text) =>
        Assert.Throws<ArgumentException>(() => Code128.Modules(text));

    private static string? Decode(IReadOnlyList<bool> modules)
    {
        const int rows = 20;
        var width = (modules.Count + (2 * Quiet)) * PixelsPerModule;
        var pixels = new byte[width * rows];
        for (var at = 0; at < pixels.Length; at++)
        {
            var module = (at % width / PixelsPerModule) - Quiet;
            pixels[at] = module >= 0 && module < modules.Count && modules[module] ? byte.MinValue : byte.MaxValue;
        }

        var reader = new BarcodeReaderGeneric { Options = new DecodingOptions { PossibleFormats = [BarcodeFormat.CODE_128], TryHarder = true } };
        return reader.Decode(new RGBLuminanceSource(pixels, width, rows, RGBLuminanceSource.BitmapFormat.Gray8))?.Text;
    }
}
