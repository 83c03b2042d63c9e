using static System.FormattableString;

namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>What nobody may overlook, in a frame: what is replaced, what a concession was made for.</summary>
internal static class DocumentNotices
{
    public static void Replaces(PageFlow flow, ReplacedCertificate earlier, LocalTimes times) => FramedNotice.Write(
        flow, "REPLACES AN EARLIER CERTIFICATE",
        Invariant($"This certificate replaces {earlier.Number}, revision {earlier.Revision}, issued ")
        + $"{times.At(earlier.IssuedAt)}. Reason: {earlier.Why}");

    /// <param name="flow">The pages.</param>
    /// <param name="title">In capitals.</param>
    /// <param name="concession">What was granted.</param>
    /// <param name="times">The laboratory's clock.</param>
    public static void Concession(PageFlow flow, string title, ConcessionNotice concession, LocalTimes times) => FramedNotice.Write(
        flow, title,
        $"Limit concerned: {concession.Limit}. {concession.Text}\n"
        + $"Granted {times.AtWithZone(concession.GrantedAt)} by {concession.GrantedBy}, {concession.Role}.");
}
