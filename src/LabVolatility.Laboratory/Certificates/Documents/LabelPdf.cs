using PdfSharp.Drawing;
using PdfSharp.Pdf;
using static System.FormattableString;

namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>Writes container labels of 90 × 38 mm, one a page.</summary>
public static class LabelPdf
{
    private const double Millimetre = 72 / 25.4;
    private const double Width = 90 * Millimetre;
    private const double Height = 38 * Millimetre;
    private const double Left = 3 * Millimetre;
    private const double Right = Width - Left;

    // Two dots of a printer of 203 dots per inch, three of one of 300.
    private const double Module = 0.25 * Millimetre;

    /// <exception cref="ArgumentException">There is no label, a code holds what a bar code cannot, or a hazard is too long.</exception>
    /// <exception cref="TimeZoneNotFoundException">A time zone is not known on this machine.</exception>
    public static byte[] Write(IReadOnlyList<LabelContent> labels)
    {
        if (labels.Count == 0)
            throw new ArgumentException("There is no label to print.", nameof(labels));
        DocumentFonts.Ensure();
        using var document = new PdfDocument();
        document.Info.Title = "Container labels";
        document.Info.Author = labels[0].LaboratoryName;
        foreach (var label in labels)
            Draw(document.AddPage(), label);
        using var bytes = new MemoryStream();
        document.Save(bytes);
        return bytes.ToArray();
    }

    private static void Draw(PdfPage page, LabelContent label)
    {
        page.Width = XUnit.FromPoint(Width);
        page.Height = XUnit.FromPoint(Height);
        using var graphics = XGraphics.FromPdfPage(page);
        var quiet = 10 * Module;
        var bars = CodeDrawing.Bars(graphics, label.ContainerCode, quiet + 2, 8, Module, 34);
        var beside = quiet + 2 + bars + quiet;

        Line(graphics, label.ContainerCode, 14, XFontStyleEx.Bold, beside, 8, Right - beside);
        Line(graphics, Invariant($"Container {label.ContainerNumber} of {label.ContainerCount}"),
            9.5, XFontStyleEx.Regular, beside, 27, Right - beside);

        Line(graphics, $"Sample {label.SampleNumber}", 10, XFontStyleEx.Bold, Left, 44, 102);
        Line(graphics, label.Grade, 10, XFontStyleEx.Bold, Left + 106, 44, Right - Left - 106);
        var place = string.Join("  ·  ", new[] { label.Tank, label.Level, label.SamplePoint }.Where(p => !string.IsNullOrWhiteSpace(p)));
        Line(graphics, place, 8.5, XFontStyleEx.Regular, Left, 57, Right - Left);
        var sampled = "Sampled " + new LocalTimes(label.TimeZone).AtWithZone(label.SampledAt);
        Line(graphics, sampled, 8.5, XFontStyleEx.Regular, Left, 68, Right - Left);

        graphics.DrawLine(PageFlow.Hairline, Left, 80, Right, 80);
        Hazard(graphics, label.Hazard);
        Line(graphics, label.LaboratoryName, 6, XFontStyleEx.Regular, Left, 98.5, Right - Left);
    }

    private static void Hazard(XGraphics graphics, string text)
    {
        var font = TypeFaces.Make(7, XFontStyleEx.Bold);
        var lines = new TextRuler(graphics).Lines(text, font, Right - Left);
        if (lines.Count > 2)
            throw new ArgumentException("A label has two lines for the hazard; this text is longer.", nameof(text));
        for (var at = 0; at < lines.Count; at++)
            graphics.DrawString(lines[at], font, XBrushes.Black, new XPoint(Left, 81 + (8.5 * at)), XStringFormats.TopLeft);
    }

    /// <summary>One line, made smaller down to 5.5 points to fit, then shortened.</summary>
    private static void Line(
        XGraphics graphics, string text, double size, XFontStyleEx style, double left, double top, double width)
    {
        const double smallest = 5.5;
        var ruler = new TextRuler(graphics);
        var font = TypeFaces.Make(size, style);
        var natural = ruler.Width(text, font);
        if (natural > width)
            font = TypeFaces.Make(Math.Max(smallest, size * width / natural * 0.995), style);
        graphics.DrawString(
            ruler.Shortened(text, font, width), font, XBrushes.Black, new XPoint(left, top), XStringFormats.TopLeft);
    }
}
