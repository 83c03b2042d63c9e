using PdfSharp.Drawing;
using PdfSharp.Pdf.IO;

namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>Marks a copy of an issued certificate that is no longer in force; the stored bytes stay as they are.</summary>
public static class CertificateStamp
{
    private const double Top = 10;
    private const double Height = 18;

    private static readonly XPen Frame = new(XColors.Black, 1.4);

    /// <summary>A copy with the words above each page's head, such as "SUPERSEDED by NR-26-00398, revision 3".</summary>
    public static byte[] Apply(byte[] issued, string words)
    {
        using var stored = new MemoryStream(issued);
        using var document = PdfReader.Open(stored, PdfDocumentOpenMode.Modify);
        var font = TypeFaces.Make(10, XFontStyleEx.Bold);
        foreach (var page in document.Pages)
        {
            using var graphics = XGraphics.FromPdfPage(page, XGraphicsPdfPageOptions.Append);
            var box = new XRect(PageFlow.Left, Top, PageFlow.Width, Height);
            var line = new TextRuler(graphics).Shortened(words, font, PageFlow.Width - 10);
            graphics.DrawRectangle(Frame, box);
            graphics.DrawString(line, font, XBrushes.Black, box, XStringFormats.Center);
        }

        using var copy = new MemoryStream();
        document.Save(copy);
        return copy.ToArray();
    }
}
