using static System.FormattableString;

namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>Top of the first page: who certifies what, in which state, and how to check it.</summary>
internal static class CertificateOpening
{
    public static void Write(PageFlow flow, CertificateContent content, LocalTimes times)
    {
        DocumentTitle.Write(flow, new DocumentHead(
            "Certificate of volatility", DocumentHead.IssuerOf(content.LaboratoryName, content.LaboratoryPlace),
            content.Number, content.CheckCode, content.CheckAddress));
        Notices(flow, content, times);
        Identity(flow, content, times);
        Destinations(flow, content);
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
            DocumentNotices.Concession(flow, "RELEASED UNDER CONCESSION", concession, times);
        foreach (var earlier in content.Replaces)
            DocumentNotices.Replaces(flow, earlier, times);
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
