using PdfSharp;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using static System.FormattableString;

namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>A4 pages that are filled from top to bottom; measures in points.</summary>
internal sealed class PageFlow
{
    public const double Left = 51;
    public const double Width = 493;

    private const double FirstLine = 55;
    private const double LastLine = 794;

    private readonly PdfDocument _document;
    private readonly PageFurniture _furniture;
    private readonly List<XGraphics> _pages = [];

    public PageFlow(PdfDocument document, PageFurniture furniture)
    {
        (_document, _furniture) = (document, furniture);
        NewPage();
        Ruler = new TextRuler(Graphics);
    }

    public static XPen Hairline { get; } = new(XColors.Black, 0.4);

    public TypeFaces Faces { get; } = new();

    public TextRuler Ruler { get; }

    public XGraphics Graphics => _pages[^1];

    /// <summary>Where the next thing goes.</summary>
    public double Top { get; set; }

    public double Room => LastLine - Top;

    public static double WholePage => LastLine - FirstLine;

    /// <summary>Turns the page where less than <paramref name="height"/> is left.</summary>
    public bool Need(double height)
    {
        if (height <= Room)
            return false;
        NewPage();
        return true;
    }

    /// <summary>One line of text with its upper edge at <see cref="Top"/>; does not move on.</summary>
    public void Put(string text, XFont font, double left, XStringFormat? format = null) =>
        Graphics.DrawString(text, font, XBrushes.Black, new XPoint(left, Top), format ?? XStringFormats.TopLeft);

    public void Rule() => Graphics.DrawLine(Hairline, Left, Top, Left + Width, Top);

    /// <summary>A heading that stays with at least <paramref name="following"/> points of what it heads.</summary>
    public void Heading(string text, double following = 48)
    {
        Need(following + 22);
        Top += 8;
        Put(text, Faces.Heading, Left);
        Top += 14;
    }

    /// <summary>Text over the width, broken over pages line by line.</summary>
    public void Paragraph(string text, XFont font, double indent = 0)
    {
        foreach (var line in Ruler.Lines(text, font, Width - (2 * indent)))
        {
            Need(TypeFaces.LineHeight(font));
            Put(line, font, Left + indent);
            Top += TypeFaces.LineHeight(font);
        }
    }

    /// <summary>Writes head and foot of each page; nothing can be added afterwards.</summary>
    public void Finish()
    {
        for (var page = 0; page < _pages.Count; page++)
        {
            var graphics = _pages[page];
            var issuer = Ruler.Shortened(_furniture.HeadLeft, Faces.Table, Width - HeadRightWidth);
            Line(graphics, issuer, 34, XStringFormats.TopLeft, Left);
            Line(graphics, _furniture.HeadRight, 34, XStringFormats.TopRight, Left + Width);
            graphics.DrawLine(Hairline, Left, 46, Left + Width, 46);
            graphics.DrawLine(Hairline, Left, 800, Left + Width, 800);
            Line(graphics, _furniture.FootLeft, 804, XStringFormats.TopLeft, Left);
            Line(graphics, _furniture.FootMiddle, 804, XStringFormats.TopCenter, Left + (Width / 2));
            Line(graphics, Invariant($"Page {page + 1} of {_pages.Count}"), 804, XStringFormats.TopRight, Left + Width);
            graphics.Dispose();
        }
    }

    private double HeadRightWidth => Ruler.Width(_furniture.HeadRight, Faces.Table) + 12;

    private void NewPage()
    {
        var page = _document.AddPage();
        page.Size = PageSize.A4;
        _pages.Add(XGraphics.FromPdfPage(page));
        Top = FirstLine;
    }

    private void Line(XGraphics graphics, string text, double top, XStringFormat format, double left) =>
        graphics.DrawString(text, Faces.Table, XBrushes.Black, new XPoint(left, top), format);
}
