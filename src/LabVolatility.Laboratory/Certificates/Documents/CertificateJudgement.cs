namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>The limits, what was compared with them, and the statement that follows.</summary>
internal static class CertificateJudgement
{
    public static void Write(PageFlow flow, CertificateContent content)
    {
        if (content.Limits.Count > 0)
        {
            flow.Heading("Limits");
            LimitTable.Write(flow, [.. content.Limits.Select(l => ((string?)null, l))]);
        }

        flow.Heading("Statement of conformity (ISO/IEC 17025:2017, 7.8.6.2)");
        foreach (var sentence in ConformityStatement.For(content.Limits))
        {
            flow.Paragraph(sentence, flow.Faces.Body);
            flow.Top += 2;
        }
    }
}
