using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Storage;

/// <summary>Many use cases in one transaction.</summary>
public sealed class ActsTogetherTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public static TheoryData<StorageEngine> All => Engines.All;

    [Theory, MemberData(nameof(All))]
    public async Task Run_AllDone_KeepsThemWithTheirRecords(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await using var together = await Open(laboratory);

        await together.RunAsync(
            async () =>
            {
                await AddTank(together, "T-1");
                await AddTank(together, "T-2");
            },
            Cancel);
        await together.RunAsync(() => AddTank(together, "T-3"), Cancel);

        Assert.Equal("T-1 T-2 T-3", await Tanks(laboratory));
        Assert.True((await new CheckRecords(laboratory.Open).Run(Cancel)).Intact);
    }

    [Theory, MemberData(nameof(All))]
    public async Task Run_OneThrows_KeepsNone(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await using var together = await Open(laboratory);

        await Assert.ThrowsAsync<InvalidOperationException>(() => together.RunAsync(
            async () =>
            {
                await AddTank(together, "T-1");
                throw new InvalidOperationException("the second act fails");
            },
            Cancel));

        Assert.Equal("", await Tanks(laboratory));
        Assert.Throws<InvalidOperationException>(together.Open);
    }

    [Theory, MemberData(nameof(All))]
    public async Task Run_OneActTakenBack_KeepsTheOthers(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await using var together = await Open(laboratory);

        await together.RunAsync(
            async () =>
            {
                await AddTank(together, "T-1");
                await AddTank(together, "T-2", commit: false);
                await AddTank(together, "T-3");
            },
            Cancel);

        Assert.Equal("T-1 T-3", await Tanks(laboratory));
        Assert.True((await new CheckRecords(laboratory.Open).Run(Cancel)).Intact);
    }

    [Theory, MemberData(nameof(All))]
    public async Task Run_SettingsChanged_AreReadAnewByTheNextAct(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await new MakeSettings(laboratory.Open).Run(demo: false, Cancel);
        await using var together = await Open(laboratory);
        var names = new List<string>();

        await together.RunAsync(
            async () =>
            {
                names.Add(await Name(together));
                await Rename(together, "Quayside", commit: false);
                names.Add(await Name(together));
                await Rename(together, "Harbour", commit: true);
                names.Add(await Name(together));
            },
            Cancel);

        Assert.Equal(names[0], names[1]);
        Assert.Equal("Harbour", names[2]);
    }

    private static Task<ActsTogether> Open(TestLaboratory laboratory) =>
        ActsTogether.OpenAsync(new StorageOptions(laboratory.Engine, laboratory.Connection, null, "."), laboratory.Clock, Cancel);

    private static async Task AddTank(ActsTogether together, string code, bool commit = true)
    {
        await using var lab = together.Open();
        await using var writing = await lab.BeginWriteAsync(Cancel);
        lab.Tanks.Add(new Tank { Code = code, Name = code });
        lab.Act = TestLaboratory.Act;
        await lab.SaveChangesAsync(Cancel);
        if (commit)
            await writing.CommitAsync(Cancel);
    }

    private static async Task Rename(ActsTogether together, string name, bool commit)
    {
        await using var lab = together.Open();
        await using var writing = await lab.BeginWriteAsync(Cancel);
        (await lab.Settings.SingleAsync(Cancel)).Name = name;
        lab.Act = TestLaboratory.Act;
        await lab.SaveChangesAsync(Cancel);
        _ = await SettingsInForce.LoadAsync(lab, Cancel);
        if (commit)
            await writing.CommitAsync(Cancel);
    }

    private static async Task<string> Name(ActsTogether together)
    {
        await using var lab = together.Open();
        return (await SettingsInForce.LoadAsync(lab, Cancel)).Name;
    }

    private static async Task<string> Tanks(TestLaboratory laboratory)
    {
        await using var lab = laboratory.Open();
        return string.Join(' ', await lab.Tanks.OrderBy(t => t.Code).Select(t => t.Code).ToListAsync(Cancel));
    }
}
