using PdfSharp.Drawing;

namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>Draws title, issuer, number and the codes to check it by.</summary>
internal static class DocumentTitle
{
    private const double SquareSide = 78;
    private const double BarModule = 0.72;

    public static void Write(PageFlow flow, DocumentHead head)
    {
        var top = flow.Top;
        var squareLeft = PageFlow.Left + PageFlow.Width - SquareSide;
        CodeDrawing.Square(flow.Graphics, head.CheckAddress, squareLeft, top, SquareSide);

        flow.Top = top + 2;
        flow.Put(head.Title, flow.Faces.Title, PageFlow.Left);
        flow.Top = top + 29;
        flow.Put(flow.Ruler.Shortened(head.Issuer, flow.Faces.BodyBold, 390), flow.Faces.BodyBold, PageFlow.Left);
        flow.Top = top + 48;
        var bars = CodeDrawing.Bars(flow.Graphics, head.Number, PageFlow.Left, flow.Top, BarModule, 24);
        flow.Top = top + 73;
        flow.Put(head.Number, flow.Faces.Table, PageFlow.Left + (bars / 2), XStringFormats.TopCenter);

        var barsEnd = PageFlow.Left + bars + 20;
        flow.Top = top + 48;
        flow.Put("Check code " + head.CheckCode, flow.Faces.TableBold, squareLeft, XStringFormats.TopRight);
        flow.Top += 11;
        foreach (var line in flow.Ruler.Lines(head.CheckAddress, flow.Faces.Small, squareLeft - barsEnd))
        {
            flow.Put(line, flow.Faces.Small, squareLeft, XStringFormats.TopRight);
            flow.Top += 9;
        }

        flow.Top = Math.Max(flow.Top, top + SquareSide) + 4;
    }
}
