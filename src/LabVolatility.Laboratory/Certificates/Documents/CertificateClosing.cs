namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>Remarks, amendments, what the certificate does not say, and the signature.</summary>
internal static class CertificateClosing
{
    private const string Scope = "The results relate only to the samples named in this certificate.";

    private const string AsReceived =
        "The laboratory did not draw the samples itself: the results apply to the samples as received.";

    public static void Write(PageFlow flow, CertificateContent content, LocalTimes times)
    {
        Remarks(flow, content);
        Amendments(flow, content, times);
        DocumentSignature.Write(flow, Scope, content.Signature, times, CertificatePdf.NumberAndRevision(content));
    }

    private static void Remarks(PageFlow flow, CertificateContent content)
    {
        List<RemarkLine> remarks = [.. content.Remarks];
        if (content.SamplesAsReceived)
            remarks.Add(new RemarkLine("Sampling", AsReceived));
        if (content.Results.Any(r => r.Suffix == "H"))
            remarks.Add(new RemarkLine("Suffix H", "The sample was hazy; the method's precision does not apply to the result."));
        if (remarks.Count == 0)
            return;
        flow.Heading("Findings and remarks");
        TableWriter.Write(
            flow,
            [new("Subject", 2), new("Finding or remark", 9)],
            remarks.Select(IReadOnlyList<TableCell> (r) => [new(r.Heading, Bold: true), r.Text]));
    }

    private static void Amendments(PageFlow flow, CertificateContent content, LocalTimes times)
    {
        if (content.Amendments.Count == 0)
            return;
        flow.Heading("Amended since it was first reported");
        TableWriter.Write(
            flow,
            [new("What", 3), new("Before", 1.6), new("After", 1.6), new("Why", 4), new("By, at", 2.6)],
            content.Amendments.Select(IReadOnlyList<TableCell> (a) =>
                [new(a.What, Bold: true), a.Before, a.After, a.Why, TableCell.Of(a.By, times.At(a.At))]));
    }
}
