using PdfSharp.Drawing;

namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>What a certificate does not say, the signature, and the mark where it ends.</summary>
internal static class DocumentSignature
{
    private const string Software =
        "The software supports, and does not replace, a competent person's judgement. Local codes, site rules and "
        + "authorised practice come first.";

    private const string PassedOnWhole =
        "The certificate is to be passed on whole; parts of it only with the laboratory's consent.";

    /// <param name="flow">The pages.</param>
    /// <param name="scope">What the results relate to: it opens the reservations.</param>
    /// <param name="signature">Who signed.</param>
    /// <param name="times">The laboratory's clock.</param>
    /// <param name="number">Number and revision, for the end mark.</param>
    public static void Write(PageFlow flow, string scope, SignatureLine signature, LocalTimes times, string number)
    {
        flow.Heading("Reservations");
        foreach (var reservation in (string[])[scope, Software, PassedOnWhole])
            flow.Paragraph(reservation, flow.Faces.Table);
        flow.Heading("Signature", following: 72);
        FactGrid.Write(
            flow,
            ("Signed by", signature.Name),
            ("Role", signature.Role),
            ("Meaning", signature.Meaning),
            ("Signed at", times.AtWithZone(signature.SignedAt)));
        flow.Top += 3;
        flow.Paragraph(
            "Signed electronically under the person's own account; the record is kept by the laboratory.", flow.Faces.Small);
        flow.Need(24);
        flow.Top += 10;
        flow.Put(
            $"End of certificate {number}", flow.Faces.BodyBold, PageFlow.Left + (PageFlow.Width / 2), XStringFormats.TopCenter);
    }
}
