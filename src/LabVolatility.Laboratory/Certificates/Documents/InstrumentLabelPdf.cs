using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>Writes the label that is stuck on an instrument, 60 × 24 mm: bars, what they say, and the instrument's own code and name.</summary>
public static class InstrumentLabelPdf
{
    private const double Millimetre = 72 / 25.4;
    private const double Width = 60 * Millimetre;
    private const double Height = 24 * Millimetre;

    // Two dots of a printer of 203 dots per inch, three of one of 300.
    private const double Module = 0.25 * Millimetre;

    /// <param name="label">What the bars say.</param>
    /// <param name="code">The instrument's code as people say it.</param>
    /// <param name="name">Its name.</param>
    public static byte[] Write(string label, string code, string name)
    {
        DocumentFonts.Ensure();
        using var document = new PdfDocument();
        document.Info.Title = $"Label of instrument {code}";
        var page = document.AddPage();
        page.Width = XUnit.FromPoint(Width);
        page.Height = XUnit.FromPoint(Height);
        using (var graphics = XGraphics.FromPdfPage(page))
        {
            var quiet = 10 * Module;
            CodeDrawing.Bars(graphics, label, quiet, 6, Module, 26);
            Line(graphics, label, 9, XFontStyleEx.Regular, quiet, 34);
            Line(graphics, $"{code}  {name}", 10, XFontStyleEx.Bold, quiet, 48);
        }

        using var bytes = new MemoryStream();
        document.Save(bytes);
        return bytes.ToArray();
    }

    private static void Line(XGraphics graphics, string text, double size, XFontStyleEx style, double left, double top)
    {
        var font = TypeFaces.Make(size, style);
        graphics.DrawString(
            new TextRuler(graphics).Shortened(text, font, Width - (2 * left)), font, XBrushes.Black, new XPoint(left, top), XStringFormats.TopLeft);
    }
}
