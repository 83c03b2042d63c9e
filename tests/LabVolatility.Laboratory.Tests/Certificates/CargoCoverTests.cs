using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Certificates;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Batches;
using LabVolatility.Laboratory.Tests.Storage;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Certificates;

/// <summary>What a cargo certificate covers, as its batches change afterwards.</summary>
public sealed class CargoCoverTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Check_Covering_ListsTheBatches(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var (first, second) = await CargoLab.TwoReleased(lab);
        var issued = await CargoLab.Issued(lab, first, second);

        var check = await CargoLab.Check(lab, issued.CheckCode);

        Assert.Equal((issued.Number, $"{first}, {second}", "Gasoline 95", "released", false), (check.Number, check.Batch, check.Grade, check.Decision, check.Superseded));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Withdrawn_OneOfTwo_IsNoLongerCovered(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var (first, second) = await CargoLab.TwoReleased(lab);
        var issued = await CargoLab.Issued(lab, first, second);
        Done(await lab.Sign(lab.Chemist, second, DecisionKind.Withdraw));

        var lost = Assert.Single((await CargoLab.Read(lab, issued.Number)).Lost);

        Assert.Equal(("T-102", second, "has its release withdrawn"), (lost.Tank, lost.Batch, lost.Why));
        Assert.True((await CargoLab.Check(lab, issued.CheckCode)).Superseded);
        var copy = (await new ReadCertificateCopy(lab.Open).Run(issued.Number, null, Cancel))!;
        Assert.Equal($"NO LONGER COVERS tank T-102 (batch {second} has its release withdrawn)", copy.Stamp);
        Assert.Single((await new ReadCargoes(lab.Open).Run(issued.Number, null, Cancel)).Lines[0].Lost);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task MarkedForReview_AfterwardsReleasedAnew_IsNoLongerCovered(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.Batch();
        var measured = await lab.Measure(await lab.Sample(batch), "65.0");
        Done(await lab.Sign(lab.Chemist, batch));
        var issued = await CargoLab.Issued(lab, batch);

        Done(await lab.Amend(lab.Manager, measured, "65.4"));
        var marked = Assert.Single((await CargoLab.Read(lab, issued.Number)).Lost);
        Done(await lab.Sign(lab.Chemist, batch));
        var anew = Assert.Single((await CargoLab.Read(lab, issued.Number)).Lost);

        Assert.Equal(("is marked for review", "has been released anew"), (marked.Why, anew.Why));
        Assert.True((await CargoLab.Check(lab, issued.CheckCode)).Superseded);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task BatchPage_NamedOnACargo_ShowsItAndItsStory(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var (first, second) = await CargoLab.TwoReleased(lab);
        var issued = await CargoLab.Issued(lab, first);

        var sheets = (First: (await new ReadBatch(lab.Open, lab.Lab.Clock).Run(first, Cancel))!, Second: (await new ReadBatch(lab.Open, lab.Lab.Clock).Run(second, Cancel))!);

        Assert.Equal(issued.Number, Assert.Single(sheets.First.Cargoes).Number);
        Assert.Contains(sheets.First.Story, e => e.What == $"cargo certificate {issued.Number}, revision 1 issued" && e.Who == lab.Chemist.Name);
        Assert.Empty(sheets.Second.Cargoes);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task List_FilteredByShipOrBatch_FindsTheLatestRevisions(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var (first, second) = await CargoLab.TwoReleased(lab);
        var issued = await CargoLab.Issued(lab, first);
        var other = Done(await CargoLab.Issue(lab, lab.Chemist, (await CargoLab.Request(lab, second)) with { Ship = "MT Ternen" }));
        Done(await CargoLab.Issue(lab, lab.Chemist, (await CargoLab.Request(lab, first)) with { Replaces = issued.Number, ReplacesRevision = 1, ReplacesWhy = "the berth was wrong" }));
        var read = new ReadCargoes(lab.Open);

        var all = (await read.Run(null, null, Cancel)).Lines;

        Assert.Equal([(other.Number, 1), (issued.Number, 2)], all.Select(l => (l.Number, l.Revision)));
        Assert.Equal(other.Number, Assert.Single((await read.Run("Ternen", null, Cancel)).Lines).Number);
        Assert.Equal(issued.Number, Assert.Single((await read.Run(first, null, Cancel)).Lines).Number);
        Assert.Equal(issued.Number, Assert.Single((await read.Run(null, other.Number, Cancel)).Lines).Number);
    }
}
