using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Batches;

/// <summary>Who can be called to sign at night.</summary>
public sealed class OnCallTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Signers_OneMeasured_AreTheOthersThoseOnCallFirst(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.Batch();
        await lab.Measure(await lab.Sample(batch), "65.0", by: lab.Chemist);
        Done(await Keep(lab).Add(lab.Chemist, Turn(lab, lab.SecondManager), Cancel));

        var signers = await Signers(lab, batch);

        Assert.Equal([(lab.SecondManager.Name, "555 01 02"), (lab.Manager.Name, null)], signers.Select(s => (s.Name, s.Phone)));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Turn_BeforeAndAfterItsTime_IsNotOnCall(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch();
        Done(await Keep(lab).Add(lab.Chemist, Turn(lab, lab.Manager) with { From = lab.Now.AddHours(1) }, Cancel));

        var before = await OnCall(lab, batch);
        lab.Lab.Clock.Advance(TimeSpan.FromHours(1));
        var within = await OnCall(lab, batch);
        lab.Lab.Clock.Advance(TimeSpan.FromHours(11));
        var after = await OnCall(lab, batch);

        Assert.Equal((0, 1, 0), (before.Count, within.Count, after.Count));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Turn_EndedEarly_LeavesTheList(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var running = Done(await Keep(lab).Add(lab.Manager, Turn(lab, lab.Manager), Cancel));
        var coming = Done(await Keep(lab).Add(lab.Manager, Turn(lab, lab.Chemist) with { From = lab.Now.AddHours(2) }, Cancel));
        lab.Lab.Clock.Advance(TimeSpan.FromHours(1));
        var read = new ReadOnCall(lab.Open, lab.Lab.Clock);
        Assert.Equal(2, (await read.Run(Cancel)).Turns.Count);

        Done(await Keep(lab).End(lab.Chemist, running, Cancel));

        Assert.Equal(coming, Assert.Single((await read.Run(Cancel)).Turns).Id);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Turn_Wrong_IsRefusedFieldByField(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var turn = new KeepOnCall.Turn(lab.Analyst.Id, " ", lab.Now, lab.Now.AddDays(40));

        var answer = await Keep(lab).Add(lab.Chemist, turn, Cancel);

        Assert.Equal(AnswerKind.Invalid, answer.Kind);
        Assert.Equal(["/person", "/phone", "/until"], answer.Problems.Select(p => p.Field));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Keeping_ByRole_IsForWhoDecides(StorageEngine engine)
    {
        await using var lab = await Create(engine);

        foreach (var person in lab.People)
        {
            var answer = await Keep(lab).Add(person, Turn(lab, lab.Manager), Cancel);
            Assert.Equal(person.May(Right.Decide) ? AnswerKind.Done : AnswerKind.Forbidden, answer.Kind);
        }
    }

    private static KeepOnCall Keep(GasolineLab lab) => new(lab.Open, lab.Lab.Clock);

    private static KeepOnCall.Turn Turn(GasolineLab lab, Actor person) => new(person.Id, "555 01 02", lab.Now, lab.Now.AddHours(12));

    private static async Task<IReadOnlyList<Signer>> Signers(GasolineLab lab, string batch) =>
        await new ReadSigners(lab.Open, lab.Lab.Clock).Run((await lab.Assess(batch)).Evidence, Cancel);

    private static async Task<List<Signer>> OnCall(GasolineLab lab, string batch) => [.. (await Signers(lab, batch)).Where(s => s.Phone is not null)];
}
