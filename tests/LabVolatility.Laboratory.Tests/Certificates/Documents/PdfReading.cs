using System.Text.RegularExpressions;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;
using ZXing;
using ZXing.Common;

namespace LabVolatility.Laboratory.Tests.Certificates.Documents;

/// <summary>Reads a PDF back: its text page by page, and the codes from the black rectangles drawn.</summary>
internal static partial class PdfReading
{
    private const int PixelsPerPoint = 8;

    public static IReadOnlyList<string> Texts(byte[] pdf) =>
        Pages(pdf, page => Spaces().Replace(ContentOrderTextExtractor.GetText(page, false), " "));

    public static IReadOnlyList<T> Pages<T>(byte[] pdf, Func<Page, T> read)
    {
        using var document = PdfDocument.Open(pdf);
        return [.. document.GetPages().Select(read)];
    }

    /// <summary>What a scanner reads in a region given in points from the left and upper edge, or null.</summary>
    public static string? Code(Page page, BarcodeFormat format, double left, double top, double width, double height)
    {
        var (across, down) = ((int)(width * PixelsPerPoint), (int)(height * PixelsPerPoint));
        var pixels = new byte[across * down];
        Array.Fill(pixels, byte.MaxValue);
        var boxes = page.Paths.Where(p => p.IsFilled).SelectMany(p => p).Select(p => p.GetBoundingRectangle());
        foreach (var box in boxes.Where(b => b.HasValue).Select(b => b!.Value))
            Fill(pixels, across, down, box.Left - left, page.Height - box.Top - top, box.Right - left, page.Height - box.Bottom - top);
        var reader = new BarcodeReaderGeneric { Options = new DecodingOptions { PossibleFormats = [format], TryHarder = true } };
        return reader.Decode(new RGBLuminanceSource(pixels, across, down, RGBLuminanceSource.BitmapFormat.Gray8))?.Text;
    }

    private static void Fill(byte[] pixels, int across, int down, double left, double top, double right, double bottom)
    {
        for (var row = Pixel(top, down); row < Pixel(bottom, down); row++)
            for (var column = Pixel(left, across); column < Pixel(right, across); column++)
                pixels[(row * across) + column] = 0;
    }

    private static int Pixel(double points, int end) => Math.Clamp((int)((points * PixelsPerPoint) + 0.5), 0, end);

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
