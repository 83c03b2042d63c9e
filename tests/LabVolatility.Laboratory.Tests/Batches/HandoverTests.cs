using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using LabVolatility.Laboratory.Today;
using Microsoft.EntityFrameworkCore;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Batches;

/// <summary>Hand-over notes: written with a hold or later, waiting at Today, taken by somebody else.</summary>
public sealed class HandoverTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Hold_WithANote_HandsItOverInTheSameAct(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch();

        var hold = Done(await Hold(lab, batch, new Handover("Ring the jetty before six.", "day shift", lab.Now.AddHours(4))));

        var open = Assert.Single((await Today(lab))!);
        Assert.Equal((batch, "Ring the jetty before six.", "day shift", lab.Now.AddHours(4)), (open.Batch, open.Note.Text, open.Note.AskedOf, open.Note.DueAt));
        Assert.Equal((hold.Id, lab.Chemist.Name), (open.Note.DecisionId, open.Note.ByName));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Hold_NoteSaysNothing_HoldsNothing(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch();

        var answer = await Hold(lab, batch, new Handover(" ", "day shift"));

        Assert.Equal((AnswerKind.Invalid, "/handover/text"), (answer.Kind, Assert.Single(answer.Problems).Field));
        Assert.Null((await lab.Assess(batch)).InForce);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Take_BySomebodyElse_IsRecordedAndWaitsNoLonger(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch();
        var note = Done(await Write(lab, batch));
        lab.Lab.Clock.Advance(TimeSpan.FromHours(2));

        Done(await new TakeHandover(lab.Open, lab.Lab.Clock).Run(lab.Chemist, note, Cancel));

        Assert.Empty((await Today(lab))!);
        var taken = Assert.Single((await new ReadBatch(lab.Open, lab.Lab.Clock).Run(batch, Cancel))!.Handovers).Taken!;
        Assert.Equal((lab.Chemist.Name, lab.Now), (taken.ByName, taken.At));
        Assert.Equal("take hand-over note", await lab.Read(context => context.AuditRecords.OrderByDescending(r => r.Sequence).Select(r => r.Action).FirstAsync(Cancel)));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Take_Twice_TellsWhoHasIt(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var note = Done(await Write(lab, await lab.MeasuredBatch()));
        var take = new TakeHandover(lab.Open, lab.Lab.Clock);
        Done(await take.Run(lab.Chemist, note, Cancel));

        var again = await take.Run(lab.Chemist, note, Cancel);
        var late = await take.Run(lab.Manager, note, Cancel);

        Assert.Equal((AnswerKind.Repeated, AnswerKind.Conflict), (again.Kind, late.Kind));
        Assert.Contains("Tomas Lind has taken it", late.Text, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Take_OnesOwn_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch();
        Done(await Hold(lab, batch, new Handover("Ring the jetty.")));
        var note = Assert.Single((await Today(lab))!).Note.Id;

        var answer = await new TakeHandover(lab.Open, lab.Lab.Clock).Run(lab.Chemist, note, Cancel);

        Assert.Equal((AnswerKind.Refused, TakeHandover.Rule), (answer.Kind, Assert.Single(Rules(answer))));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Rights_ByRole_AreThoseOfWorkAndDecision(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch();
        var note = Done(await Write(lab, batch));

        foreach (var person in lab.People)
        {
            var written = await new WriteHandover(lab.Open, lab.Lab.Clock).Run(person, new WriteHandover.Request(Guid.NewGuid(), batch, new Handover("Look again.")), Cancel);
            Assert.Equal(person == lab.Engineer || person == lab.Administrator || person == lab.Auditor, written.Kind == AnswerKind.Forbidden);
        }

        foreach (var person in (Actor[])[lab.SecondAnalyst, lab.Engineer, lab.Auditor, lab.Chemist with { IsKey = true }])
            Assert.Equal(AnswerKind.Forbidden, (await new TakeHandover(lab.Open, lab.Lab.Clock).Run(person, note, Cancel)).Kind);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Today_SeveralNotes_TheOneDueFirstOnTop(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch();
        foreach (var (text, due) in new (string, DateTimeOffset?)[] { ("some day", null), ("at noon", lab.Now.AddHours(4)), ("at ten", lab.Now.AddHours(2)) })
            Done(await new WriteHandover(lab.Open, lab.Lab.Clock).Run(lab.Analyst, new WriteHandover.Request(Guid.NewGuid(), batch, new Handover(text, null, due)), Cancel));

        var open = (await Today(lab))!;

        Assert.Equal(["at ten", "at noon", "some day"], open.Select(n => n.Note.Text));
        Assert.Null((await new ReadToday(lab.Open, lab.Lab.Clock).Run(lab.Analyst, Cancel)).HandedOver);
    }

    private static Task<Answer<Guid>> Write(GasolineLab lab, string batch) => new WriteHandover(lab.Open, lab.Lab.Clock)
        .Run(lab.Analyst, new WriteHandover.Request(Guid.NewGuid(), batch, new Handover("The second bottle is in the bath.")), Cancel);

    private static async Task<Answer<DecisionInForce>> Hold(GasolineLab lab, string batch, Handover handover)
    {
        var seen = await lab.Assess(batch);
        return await lab.Sign(lab.Chemist, new DecisionRequest(Guid.NewGuid(), batch, DecisionKind.Hold, 0, seen.EvidenceHash, "a second bottle is asked for", "password") { Handover = handover });
    }

    private static async Task<IReadOnlyList<OpenHandover>?> Today(GasolineLab lab) =>
        (await new ReadToday(lab.Open, lab.Lab.Clock).Run(lab.Manager, Cancel)).HandedOver;
}
