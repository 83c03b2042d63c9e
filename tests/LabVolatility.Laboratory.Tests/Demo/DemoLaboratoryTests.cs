using System.Globalization;
using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Time.Testing;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Demo;

[Collection(SharedDemo.Name)]
public sealed class DemoLaboratoryTests(SharedDemo demo)
{
    private const int FewDays = 56;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public static TheoryData<StorageEngine> All => Engines.All;

    // Winter; ten minutes into the first of May, local time; a leap day; 02:30 for the second time, as the clock is set back.
    public static TheoryData<string> Starts => ["2027-01-15T11:00:00Z", "2027-04-30T22:10:00Z", "2028-02-29T22:30:00Z", "2026-10-25T01:30:00Z"];

    [Theory, MemberData(nameof(All))]
    public async Task Make_AllSteps_LeavesRecordsThatHold(StorageEngine engine)
    {
        var laboratory = await demo.On(engine);

        await AssertHolds(laboratory);
        Assert.Equal(Enumerable.Range(1, demo.Told[engine].Count), demo.Told[engine].Select(t => t.Done));
        Assert.All(demo.Told[engine], t => Assert.Equal(demo.Told[engine].Count, t.Of));
    }

    [Theory, MemberData(nameof(Starts))]
    public async Task Make_AnyDate_LeavesRecordsThatHold(string start)
    {
        await using var laboratory = await TestLaboratory.Create(StorageEngine.Sqlite);
        laboratory.Clock.SetUtcNow(DateTimeOffset.Parse(start, CultureInfo.InvariantCulture));

        await SharedDemo.Maker(laboratory, days: FewDays).MakeAsync(cancel: Cancel);

        await AssertHolds(laboratory);
        await DemoCases.AssertAllThere(laboratory, FewDays, Cancel);
    }

    [Theory, MemberData(nameof(All))]
    public async Task Make_Again_ChangesNothing(StorageEngine engine)
    {
        var laboratory = await demo.On(engine);
        var before = await Counts(laboratory);

        await SharedDemo.Maker(laboratory, new FakeTimeProvider(laboratory.Clock.GetUtcNow().AddDays(1))).MakeAsync(cancel: Cancel);

        Assert.Equal(before, await Counts(laboratory));
    }

    [Theory, MemberData(nameof(All))]
    public async Task Make_BrokenOffAndGoneOn_IsTheSameDemo(StorageEngine engine)
    {
        await using var whole = await TestLaboratory.Create(engine);
        await SharedDemo.Maker(whole, days: FewDays).MakeAsync(cancel: Cancel);
        await using var broken = await TestLaboratory.Create(engine);
        foreach (var steps in (int[])[3, 250, 251, 430, 775])
        {
            await Break(broken, steps);
            broken.Clock.Advance(TimeSpan.FromMinutes(7));
        }

        await SharedDemo.Maker(broken, days: FewDays).MakeAsync(cancel: Cancel);

        Assert.Equal(await Counts(whole), await Counts(broken));
        await AssertHolds(broken);
    }

    [Fact]
    public async Task Make_InALaboratorysOwnDatabase_Refuses()
    {
        await using var laboratory = await TestLaboratory.Create(StorageEngine.Sqlite);
        await new MakeSettings(laboratory.Open).Run(demo: false, Cancel);

        var refusal = await Assert.ThrowsAsync<InvalidOperationException>(() => SharedDemo.Maker(laboratory).MakeAsync(cancel: Cancel));

        Assert.Contains("own records", refusal.Message, StringComparison.Ordinal);
    }

    // Cancelled after so many steps, in the middle of a day, which is begun anew.
    private static async Task Break(TestLaboratory laboratory, int steps)
    {
        using var breaking = CancellationTokenSource.CreateLinkedTokenSource(Cancel);
        var listener = new Listener(told =>
        {
            if (told.Done == steps)
                breaking.Cancel();
        });
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => SharedDemo.Maker(laboratory, days: FewDays).MakeAsync(listener, breaking.Token));
    }

    private static async Task AssertHolds(TestLaboratory laboratory)
    {
        var replayed = await new Replay(laboratory.Open).Run(Cancel);
        var records = await new CheckRecords(laboratory.Open).Run(Cancel);
        var released = (await DemoCases.Batches(laboratory, Cancel)).Where(b => b.InForce?.Kind == DecisionKind.Release).ToList();

        Assert.Empty(replayed.Differences);
        Assert.True(replayed.Results > 200, $"{replayed.Results} results");
        Assert.Empty(records.Findings);
        Assert.True(records.Intact);
        Assert.True(released.Count >= 45, $"{released.Count} released");
        Assert.All(released, b => Assert.Equal(Outcome.Conforms, b.Evidence.Outcome));
        Assert.All(released, b => Assert.DoesNotContain(b.InForce!.PersonId, EvidenceRules.Hands(b.Evidence)));
    }

    private static async Task<string> Counts(TestLaboratory laboratory)
    {
        await using var lab = laboratory.Open();
        int[] counts =
        [
            await lab.People.CountAsync(Cancel), await lab.Grades.CountAsync(Cancel), await lab.Tanks.CountAsync(Cancel),
            await lab.SamplePoints.CountAsync(Cancel), await lab.Batches.CountAsync(Cancel), await lab.Samples.CountAsync(Cancel),
            await lab.Containers.CountAsync(Cancel), await lab.Determinations.CountAsync(Cancel), await lab.DeterminationRevisions.CountAsync(Cancel),
            await lab.Results.CountAsync(Cancel), await lab.TankMovements.CountAsync(Cancel), await lab.Verifications.CountAsync(Cancel),
            await lab.Decisions.CountAsync(Cancel), await lab.ReviewMarks.CountAsync(Cancel), await lab.Certificates.CountAsync(Cancel),
            await lab.LaboratoryAreas.CountAsync(Cancel), await lab.LaboratoryLimits.CountAsync(Cancel), await lab.PrecisionEntries.CountAsync(Cancel),
            await lab.AuditRecords.CountAsync(Cancel), await lab.Commands.CountAsync(Cancel),
        ];
        return string.Join(", ", counts);
    }
}
