using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Batches;
using LabVolatility.Laboratory.Tests.Storage;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Samples;

public sealed class ReadSamplesTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task ReadSamples_MoreThanAPage_GivesEachOnce(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        for (var i = 0; i < ReadSamples.PageSize + 3; i++)
            await lab.Sample(null, containers: 1);
        var read = new ReadSamples(lab.Open);

        foreach (var byDeadline in new[] { false, true })
        {
            var first = await read.Run(new SamplesFilter(ByDeadline: byDeadline), Cancel);
            var second = await read.Run(new SamplesFilter(ByDeadline: byDeadline, After: first.Next), Cancel);

            Assert.Equal(ReadSamples.PageSize, first.Lines.Count);
            Assert.Equal(3, second.Lines.Count);
            Assert.Null(second.Next);
            Assert.Equal(ReadSamples.PageSize + 3, first.Lines.Concat(second.Lines).Select(l => l.Number).Distinct().Count());
        }
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task ReadSamples_TextInSmallLetters_FindsNumberTankAndBatch(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.Batch();
        var number = await lab.Sample(batch);
        await lab.Sample(null, grade: American);
        var read = new ReadSamples(lab.Open);

        foreach (var text in new[] { number.ToLowerInvariant(), batch.ToLowerInvariant(), "t-101", "gasoline" })
            Assert.Equal(number, Assert.Single((await read.Run(new SamplesFilter(text), Cancel)).Lines).Number);
        Assert.Empty((await read.Run(new SamplesFilter("100%"), Cancel)).Lines);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task ReadSamples_MovementAfterSampling_SaysVoid(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Sample(await lab.Batch());
        Done(await lab.Move(lab.Engineer, lab.Now.AddMinutes(-10)));

        var line = Assert.Single((await new ReadSamples(lab.Open).Run(new SamplesFilter(), Cancel)).Lines);

        Assert.StartsWith("void for a decision: receipt in tank T-101", line.Void, StringComparison.Ordinal);
        Assert.Equal((3, 3), (line.SealedLeft, line.Containers));
        Assert.Equal([En], line.Waiting);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task ReadSample_AfterAMeasurement_NamesOpenedAndKept(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var number = await lab.Sample(await lab.Batch());
        await lab.Measure(number, "65.0");

        var sheet = await new ReadSample(lab.Open, lab.Lab.Clock).Run(number, Cancel);

        Assert.NotNull(sheet);
        Assert.Single(sheet.Determinations);
        Assert.Single(sheet.Containers[0].Container.Openings);
        Assert.Equal([false, false, true], sheet.Containers.Select(c => c.Retained));
        Assert.Equal("Ida Berg", sheet.NameOf(sheet.Containers[0].Container.Openings[0].By));
        Assert.Null(await new ReadSample(lab.Open, lab.Lab.Clock).Run("S2600099X", Cancel));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task ReadTanks_AfterAMovement_LeavesOutTheVoid(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Sample(await lab.Batch());
        var read = new ReadTanks(lab.Open, lab.Lab.Clock);

        Assert.Single((await read.Run(Cancel)).First(t => t.Tank.Code == GasolineLab.Tank).Standing);
        Done(await lab.Move(lab.Engineer, lab.Now.AddMinutes(-10)));
        var after = (await read.Run(Cancel)).First(t => t.Tank.Code == GasolineLab.Tank);

        Assert.Empty(after.Standing);
        Assert.Single(after.Movements);
    }
}
