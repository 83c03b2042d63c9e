using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Certificates;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Tests.Batches;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Certificates;

/// <summary>A cargo of two shore tanks at a gasoline laboratory.</summary>
/// <remarks>0.965 · 65.0 − 3.78 = 58.945 kPa and 0.965 · 61.0 − 3.78 = 55.085 kPa; their mean would be 57.0 kPa.</remarks>
internal static class CargoLab
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public static async Task<string> Released(GasolineLab lab, string total = "65.0", string tank = "T-101", Actor? signer = null)
    {
        var batch = await lab.MeasuredBatch(total, change: r => r with { Tank = tank });
        GasolineLab.Done(await lab.Sign(signer ?? lab.Chemist, batch));
        return batch;
    }

    public static async Task<(string First, string Second)> TwoReleased(GasolineLab lab) =>
        (await Released(lab), await Released(lab, "61.0", "T-102"));

    public static async Task<CargoRequest> Request(GasolineLab lab, params string[] batches)
    {
        var read = await new ReadCargoBatches(lab.Open).Run(batches, Cancel);
        return new CargoRequest
        {
            CommandId = Guid.NewGuid(),
            Ship = "MT Havørn",
            Voyage = "26-17",
            Port = "Fjordvik",
            Berth = "Jetty 2",
            Product = "Gasoline 95",
            Reference = "nomination 5512",
            Tanks = [.. read.Select(b => new CargoTankRequest(b.Batch.TankCode, b.Batch.Number, b.InForce?.Id ?? Guid.Empty))],
            Password = "password",
        };
    }

    public static Task<Answer<IssuedCertificate>> Issue(GasolineLab lab, Actor signer, CargoRequest request) =>
        new IssueCargoCertificate(lab.Open, lab.Lab.Clock, new Password()).Run(signer, request, Cancel);

    public static async Task<IssuedCertificate> Issued(GasolineLab lab, params string[] batches) =>
        GasolineLab.Done(await Issue(lab, lab.Chemist, await Request(lab, batches)));

    public static async Task<CargoSheet> Read(GasolineLab lab, string number)
    {
        var sheet = await new ReadCargoes(lab.Open).One(number, Cancel);
        Assert.NotNull(sheet);
        return sheet;
    }

    public static async Task<ReadCertificates.Check> Check(GasolineLab lab, string code)
    {
        var found = await new ReadCertificates(lab.Open).ByCode(code, Cancel);
        Assert.NotNull(found);
        return found;
    }

    private sealed class Password : ISignature
    {
        public Task<bool> IsRightAsync(Actor actor, string password, CancellationToken cancel) => Task.FromResult(password == "password");
    }
}
