using PdfSharp.Drawing;

namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>A frame that nobody overlooks: a word in capitals and what it means.</summary>
internal static class FramedNotice
{
    private const double Inset = 8;

    private static readonly XPen Frame = new(XColors.Black, 1.4);

    public static void Write(PageFlow flow, string title, string text)
    {
        var body = flow.Faces.Body;
        var line = TypeFaces.LineHeight(body);
        var lines = flow.Ruler.Lines(text, body, PageFlow.Width - (2 * Inset));
        var height = (2 * Inset) + 15 + (lines.Count * line);
        if (height > PageFlow.WholePage)
        {
            flow.Heading(title);
            flow.Paragraph(text, body);
            return;
        }

        flow.Need(height);
        flow.Graphics.DrawRectangle(Frame, PageFlow.Left, flow.Top, PageFlow.Width, height);
        flow.Top += Inset;
        flow.Put(title, flow.Faces.Heading, PageFlow.Left + Inset);
        flow.Top += 15;
        foreach (var part in lines)
        {
            flow.Put(part, body, PageFlow.Left + Inset);
            flow.Top += line;
        }

        flow.Top += Inset + 6;
    }
}
