using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Certificates;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Batches;
using LabVolatility.Laboratory.Tests.Storage;
using UglyToad.PdfPig;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Certificates;

/// <summary>Copies of certificates: as issued while they hold, stamped once they don't.</summary>
public sealed class ReadCertificateCopyTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Copy_InForce_IsTheBytesIssued(StorageEngine engine)
    {
        await using var lab = await GasolineLab.Create(engine);
        var (batch, number) = await Issued(lab);

        var copy = await new ReadCertificateCopy(lab.Open).OfBatch(batch, Cancel);

        Assert.Equal((number, 1, null), (copy!.Number, copy.Revision, copy.Stamp));
        Assert.Equal((await new ReadCertificates(lab.Open).ByNumber(number, 1, Cancel))!.Pdf, copy.Pdf);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Copy_Withdrawn_IsStampedAndTheStoredBytesStay(StorageEngine engine)
    {
        await using var lab = await GasolineLab.Create(engine);
        var (batch, number) = await Issued(lab);
        var before = (await new ReadCertificates(lab.Open).ByNumber(number, 1, Cancel))!;
        GasolineLab.Done(await lab.Sign(lab.Chemist, batch, DecisionKind.Withdraw));

        var copy = await new ReadCertificateCopy(lab.Open).Run(number, null, Cancel);

        Assert.Equal("WITHDRAWN by Tomas Lind, 2026-05-04 10:00", copy!.Stamp);
        using var pdf = PdfDocument.Open(copy.Pdf);
        Assert.All(pdf.GetPages(), page => Assert.Contains("WITHDRAWN", page.Text.Replace(" ", "", StringComparison.Ordinal), StringComparison.Ordinal));
        var after = (await new ReadCertificates(lab.Open).ByNumber(number, 1, Cancel))!;
        Assert.Equal((before.Sha256, Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(after.Pdf))), (after.Sha256, after.Sha256));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Copy_ReleasedAgain_NamesTheRevisionThatReplacesIt(StorageEngine engine)
    {
        await using var lab = await GasolineLab.Create(engine);
        var (batch, number) = await Issued(lab);
        GasolineLab.Done(await lab.Sign(lab.Chemist, batch, DecisionKind.Withdraw));
        GasolineLab.Done(await lab.Sign(lab.Chemist, batch));
        GasolineLab.Done(await new IssueCertificate(lab.Open, lab.Lab.Clock).Run(lab.Chemist, batch, Cancel));
        var read = new ReadCertificateCopy(lab.Open);

        var (first, latest) = (await read.Run(number, 1, Cancel), await read.Run(number, null, Cancel));

        Assert.Equal($"SUPERSEDED by {number}, revision 2", first!.Stamp);
        Assert.Equal((2, null), (latest!.Revision, latest.Stamp));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Copy_NotIssued_IsNull(StorageEngine engine)
    {
        await using var lab = await GasolineLab.Create(engine);
        var batch = await lab.Batch();

        Assert.Null(await new ReadCertificateCopy(lab.Open).OfBatch(batch, Cancel));
        Assert.Null(await new ReadCertificateCopy(lab.Open).Run("C2600001", null, Cancel));
    }

    private static async Task<(string Batch, string Number)> Issued(GasolineLab lab)
    {
        var batch = await lab.ReleasedBatch();
        var issued = GasolineLab.Done(await new IssueCertificate(lab.Open, lab.Lab.Clock).Run(lab.Chemist, batch, Cancel));
        return (batch, issued.Number);
    }
}
