using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>The few type sizes that a document uses; heights in points.</summary>
internal sealed class TypeFaces
{
    public XFont Small { get; } = Make(6.8, XFontStyleEx.Regular);

    public XFont Table { get; } = Make(7.6, XFontStyleEx.Regular);

    public XFont TableBold { get; } = Make(7.6, XFontStyleEx.Bold);

    public XFont Body { get; } = Make(8.6, XFontStyleEx.Regular);

    public XFont BodyBold { get; } = Make(8.6, XFontStyleEx.Bold);

    public XFont Heading { get; } = Make(10.5, XFontStyleEx.Bold);

    public XFont Title { get; } = Make(19, XFontStyleEx.Bold);

    public static XFont Make(double size, XFontStyleEx style)
    {
        DocumentFonts.Ensure();
        return new XFont(DocumentFonts.Family, size, style, new XPdfFontOptions(PdfFontEncoding.Unicode));
    }

    public static double LineHeight(XFont font) => font.Size * 1.28;
}
