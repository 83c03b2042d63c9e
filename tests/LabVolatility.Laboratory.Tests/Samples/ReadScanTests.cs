using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Batches;
using LabVolatility.Laboratory.Tests.Storage;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Samples;

public sealed class ReadScanTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task ReadScan_OpenedContainer_SaysWhyNot(StorageEngine engine)
    {
        await using var lab = await Create(engine, g => g.Tests = [g.Tests[0] with { Duplicate = true }]);
        var number = await lab.Sample(null);
        await lab.Measure(number, "65.0");

        var found = Done(await new ReadScan(lab.Open, lab.Lab.Clock).Run(ScanCode.ForContainer(number, 1).ToLowerInvariant(), Cancel));

        Assert.Equal((number, 1), (found.Number, found.Container));
        Assert.Equal([En], found.Waiting);
        Assert.Contains("has been opened already", found.WhyNot, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task ReadScan_UnknownOrDamaged_MakesNothing(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var read = new ReadScan(lab.Open, lab.Lab.Clock);

        Assert.Equal(AnswerKind.NotFound, (await read.Run(ScanCode.ForSample(2026, 77), Cancel)).Kind);
        Assert.Contains("misread", (await read.Run("S26000771", Cancel)).Text + (await read.Run("S26000772", Cancel)).Text, StringComparison.Ordinal);
        Assert.Equal(AnswerKind.Invalid, (await read.Run("62.1", Cancel)).Kind);
        Assert.Empty((await new ReadSamples(lab.Open).Run(new SamplesFilter(), Cancel)).Lines);
    }
}
