using PdfSharp.Drawing;
using static System.FormattableString;

namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>Top of the first page: who certifies what, in which state, and how to check it.</summary>
internal static class CertificateOpening
{
    private const double SquareSide = 78;
    private const double BarModule = 0.72;

    public static void Write(PageFlow flow, CertificateContent content, LocalTimes times)
    {
        Title(flow, content);
        Notices(flow, content, times);
        Identity(flow, content, times);
        Destinations(flow, content);
    }

    private static void Title(PageFlow flow, CertificateContent content)
    {
        var top = flow.Top;
        var squareLeft = PageFlow.Left + PageFlow.Width - SquareSide;
        CodeDrawing.Square(flow.Graphics, content.CheckAddress, squareLeft, top, SquareSide);

        flow.Top = top + 2;
        flow.Put("Certificate of volatility", flow.Faces.Title, PageFlow.Left);
        flow.Top = top + 29;
        var issuer = content.LaboratoryPlace is { Length: > 0 } place
            ? $"{content.LaboratoryName}, {place}"
            : content.LaboratoryName;
        flow.Put(flow.Ruler.Shortened(issuer, flow.Faces.BodyBold, 390), flow.Faces.BodyBold, PageFlow.Left);
        flow.Top = top + 48;
        var bars = CodeDrawing.Bars(flow.Graphics, content.Number, PageFlow.Left, flow.Top, BarModule, 24);
        flow.Top = top + 73;
        flow.Put(content.Number, flow.Faces.Table, PageFlow.Left + (bars / 2), XStringFormats.TopCenter);

        var barsEnd = PageFlow.Left + bars + 20;
        flow.Top = top + 48;
        flow.Put("Check code " + content.CheckCode, flow.Faces.TableBold, squareLeft, XStringFormats.TopRight);
        flow.Top += 11;
        foreach (var line in flow.Ruler.Lines(content.CheckAddress, flow.Faces.Small, squareLeft - barsEnd))
        {
            flow.Put(line, flow.Faces.Small, squareLeft, XStringFormats.TopRight);
            flow.Top += 9;
        }

        flow.Top = Math.Max(flow.Top, top + SquareSide) + 4;
    }

    private static void Notices(PageFlow flow, CertificateContent content, LocalTimes times)
    {
        if (content.Withdrawal is { } withdrawal)
            FramedNotice.Write(flow, "WITHDRAWN: THIS CERTIFICATE IS NO LONGER IN FORCE",
                $"Withdrawn {times.AtWithZone(withdrawal.At)} by {withdrawal.By}, {withdrawal.Role}. Reason: {withdrawal.Why}");
        if (content.ReplacedBy is { } later)
            FramedNotice.Write(flow, "SUPERSEDED: USE THE CERTIFICATE THAT REPLACES IT",
                Invariant($"Replaced by certificate {later.Number}, revision {later.Revision}, issued ")
                + $"{times.At(later.IssuedAt)}. Reason: {later.Why}");
        if (content.Concession is { } concession)
            FramedNotice.Write(flow, "RELEASED UNDER CONCESSION",
                $"Limit concerned: {concession.Limit}. {concession.Text}\n"
                + $"Granted {times.AtWithZone(concession.GrantedAt)} by {concession.GrantedBy}, {concession.Role}.");
        foreach (var earlier in content.Replaces)
            FramedNotice.Write(flow, "REPLACES AN EARLIER CERTIFICATE",
                Invariant($"This certificate replaces {earlier.Number}, revision {earlier.Revision}, issued ")
                + $"{times.At(earlier.IssuedAt)}. Reason: {earlier.Why}");
    }

    private static void Identity(PageFlow flow, CertificateContent content, LocalTimes times)
    {
        var batch = content.Batch;
        var ethanol = batch.Ethanol is { } measured
            ? $"{measured.Percent} % by volume, measured by {measured.Method}"
            : "not measured";
        flow.Heading("Batch");
        FactGrid.Write(
            flow,
            ("Batch", batch.Number),
            ("Decision", content.Decision),
            ("Grade", batch.Grade),
            ("Product state", batch.ProductState),
            ("Tank", batch.Tank),
            ("Volume", batch.Volume),
            ("Cargo", batch.Cargo),
            ("Ethanol content", ethanol),
            ("Customer", content.Customer),
            ("Certificate issued", times.At(content.IssuedAt)));
    }

    private static void Destinations(PageFlow flow, CertificateContent content)
    {
        if (content.Destinations.Count == 0)
            return;
        flow.Heading("Destinations and period of use");
        TableWriter.Write(
            flow,
            [new("Area", 3), new("Point of compliance", 2), new("Season", 3), new("Period of use, inclusive", 3)],
            content.Destinations.Select(IReadOnlyList<TableCell> (d) =>
                [d.Area, d.PointOfCompliance, d.Season, $"{LocalTimes.Day(d.From)} to {LocalTimes.Day(d.Until)}"]));
    }
}
