using PdfSharp.Pdf;
using static System.FormattableString;

namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>Writes a cargo certificate as a PDF of A4 pages.</summary>
/// <remarks>The bytes differ from one call to the next: what is issued is stored, never written again.</remarks>
public static class CargoPdf
{
    /// <summary>Stands on every cargo certificate.</summary>
    public const string NoMean =
        "Each vapour pressure is that of one shore tank as sampled. No mean over the tanks is formed, and none may be read from "
        + "this certificate: vapour pressures do not blend in proportion to volume. A value of the commingled cargo, or of the "
        + "ship's tanks, is not reported here; it needs samples of its own.";

    private const string Scope =
        "The results relate only to the samples named in this certificate and to the shore tanks at the time of sampling.";

    /// <exception cref="TimeZoneNotFoundException">The time zone is not known on this machine.</exception>
    /// <exception cref="ArgumentException">The number holds what a bar code cannot.</exception>
    public static byte[] Write(CargoContent content)
    {
        var times = new LocalTimes(content.TimeZone);
        var number = Invariant($"{content.Number}, revision {content.Revision}");
        using var document = new PdfDocument();
        document.Info.Title = "Cargo certificate " + number;
        document.Info.Author = content.LaboratoryName;
        document.Info.CreationDate = content.IssuedAt.UtcDateTime;
        document.Language = "en";
        var flow = new PageFlow(document, new PageFurniture(
            content.LaboratoryName, "Cargo certificate " + number, $"{content.Ship}, {content.Voyage}", "All times: " + times.ZoneName));

        DocumentTitle.Write(flow, new DocumentHead(
            "Cargo certificate of volatility", DocumentHead.IssuerOf(content.LaboratoryName, content.LaboratoryPlace),
            content.Number, content.CheckCode, content.CheckAddress));
        foreach (var tank in content.Tanks)
            if (tank.Concession is { } concession)
                DocumentNotices.Concession(flow, $"TANK {tank.Tank}: RELEASED UNDER CONCESSION", concession, times);
        if (content.Replaces is { } earlier)
            DocumentNotices.Replaces(flow, earlier, times);
        Identity(flow, content, times);
        CargoTables.Write(flow, content, times);
        DocumentSignature.Write(flow, Scope, content.Signature, times, number);
        flow.Finish();

        using var bytes = new MemoryStream();
        document.Save(bytes);
        return bytes.ToArray();
    }

    private static void Identity(PageFlow flow, CargoContent content, LocalTimes times)
    {
        flow.Heading("Cargo");
        FactGrid.Write(
            flow,
            ("Ship", content.Ship),
            ("Voyage", content.Voyage),
            ("Port", content.Port),
            ("Berth", content.Berth),
            ("Product", content.Product),
            ("Shore tanks", content.Stage),
            ("Reference", content.Reference),
            ("Certificate issued", times.At(content.IssuedAt)));
        if (content.WhyGradesDiffer is { } why)
            FramedNotice.Write(flow, "TANKS OF UNLIKE GRADES", why);
    }
}
