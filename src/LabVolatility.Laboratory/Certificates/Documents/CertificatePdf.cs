using PdfSharp.Pdf;
using static System.FormattableString;

namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>Writes a certificate as a PDF of A4 pages.</summary>
/// <remarks>The bytes differ from one call to the next: what is issued is stored, never written again.</remarks>
public static class CertificatePdf
{
    /// <exception cref="TimeZoneNotFoundException">The time zone is not known on this machine.</exception>
    /// <exception cref="ArgumentException">The number holds what a bar code cannot.</exception>
    public static byte[] Write(CertificateContent content)
    {
        var times = new LocalTimes(content.TimeZone);
        using var document = new PdfDocument();
        document.Info.Title = "Certificate " + NumberAndRevision(content);
        document.Info.Author = content.LaboratoryName;
        document.Info.CreationDate = content.IssuedAt.UtcDateTime;
        document.Language = "en";
        var flow = new PageFlow(document, Furniture(content, times));

        CertificateOpening.Write(flow, content, times);
        CertificateEvidence.Write(flow, content, times);
        CertificateJudgement.Write(flow, content);
        CertificateClosing.Write(flow, content, times);
        flow.Finish();

        using var bytes = new MemoryStream();
        document.Save(bytes);
        return bytes.ToArray();
    }

    internal static string NumberAndRevision(CertificateContent content) =>
        Invariant($"{content.Number}, revision {content.Revision}");

    private static PageFurniture Furniture(CertificateContent content, LocalTimes times)
    {
        var state = content switch
        {
            { Withdrawal: not null } => "WITHDRAWN  ·  ",
            { ReplacedBy: not null } => "SUPERSEDED  ·  ",
            { Concession: not null } => "RELEASED UNDER CONCESSION  ·  ",
            _ => string.Empty,
        };
        return new PageFurniture(
            content.LaboratoryName,
            state + "Certificate " + NumberAndRevision(content),
            "Batch " + content.Batch.Number,
            "All times: " + times.ZoneName);
    }
}
