using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Batches;
using LabVolatility.Laboratory.Tests.Storage;
using LabVolatility.Laboratory.Today;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Today;

/// <summary>What waits for whom.</summary>
public sealed class ReadTodayTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Parts_ByRole_AreThatPersonsWork(StorageEngine engine)
    {
        await using var lab = await Create(engine);

        async Task<string> Of(Actor actor)
        {
            var sheet = await Read(lab, actor);
            (string Name, object? Part)[] parts =
            [
                ("bench", sheet.Bench), ("waiting", sheet.Waiting), ("review", sheet.ForReview), ("margins", sheet.Margins),
                ("seasons", sheet.Seasons), ("reference", sheet.Reference), ("accounts", sheet.Accounts), ("trail", sheet.Trail),
            ];
            return string.Join(' ', parts.Where(p => p.Part is not null).Select(p => p.Name));
        }

        Assert.Equal("bench", await Of(lab.Analyst));
        Assert.Equal("bench waiting review seasons", await Of(lab.Chemist));
        Assert.Equal("margins seasons", await Of(lab.Engineer));
        Assert.Equal("bench waiting review seasons reference", await Of(lab.Manager));
        Assert.Equal("accounts", await Of(lab.Administrator));
        Assert.Equal("review trail", await Of(lab.Auditor));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Waiting_SeveralSlots_NextFirstLongPastLast(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var long_ = await lab.Batch(change: r => r with { NeededBy = lab.Now.AddDays(-9) });
        var none = await lab.Batch();
        var later = await lab.Batch(change: r => r with { NeededBy = lab.Now.AddHours(6) });
        var next = await lab.Batch(change: r => r with { NeededBy = lab.Now.AddHours(2) });
        var missed = await lab.Batch(change: r => r with { NeededBy = lab.Now.AddHours(-1) });
        await lab.ReleasedBatch();

        var waiting = (await Read(lab, lab.Chemist)).Waiting!;

        Assert.Equal([missed, next, later, none, long_], waiting.Select(w => w.Batch.Number));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Waiting_OneBottleMeasured_CountsWhatIsLeftAndDue(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Precision();
        var batch = await lab.Batch();
        await lab.Measure(await lab.Sample(batch), "65.0");
        await lab.Sample(batch);

        var wait = Assert.Single((await Read(lab, lab.Chemist)).Waiting!);

        Assert.Equal((5, lab.Now.AddHours(3)), (wait.SealedLeft, wait.LastResultDue));
        Assert.Equal((3.0m, "kPa"), (wait.Binding!.Reproducibility, wait.Binding.Unit));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Marked_AmendedAfterRelease_IsThereUntilWithdrawn(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.Batch();
        var determination = await lab.Measure(await lab.Sample(batch), "65.0");
        Done(await lab.Sign(lab.Chemist, batch));
        Done(await lab.Amend(lab.Manager, determination, "66.0"));

        var marked = (await Read(lab, lab.Chemist)).ForReview!;
        Done(await lab.Sign(lab.Chemist, batch, DecisionKind.Withdraw));
        var after = (await Read(lab, lab.Chemist)).ForReview!;

        Assert.Equal((batch, DecisionKind.Release), (Assert.Single(marked).Batch, marked[0].Kind));
        Assert.Contains("amended", marked[0].Cause, StringComparison.Ordinal);
        Assert.Empty(after);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Decisions_ShiftBefore_AreNotShown(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.ReleasedBatch();
        // 08:00 UTC is 10:00 in Oslo; the next shift begins there at 14:00.
        lab.Lab.Clock.Advance(TimeSpan.FromHours(4));
        var batch = await lab.Batch();
        Done(await lab.Sign(lab.Chemist, batch, DecisionKind.Hold, "waits for the ship"));

        var sheet = await Read(lab, lab.Auditor);

        Assert.Equal(new DateTimeOffset(2026, 5, 4, 12, 0, 0, TimeSpan.Zero), sheet.ShiftSince);
        Assert.Equal((batch, DecisionKind.Hold, "waits for the ship"), (Assert.Single(sheet.Decisions).Batch, sheet.Decisions[0].Kind, sheet.Decisions[0].Reason));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Margins_TwoReleased_AreAsFrozenLatestFirst(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Precision();
        var first = await lab.ReleasedBatch();
        lab.Lab.Clock.Advance(TimeSpan.FromMinutes(1));
        var second = await lab.ReleasedBatch("64.0");

        var margins = (await Read(lab, lab.Engineer)).Margins!;

        Assert.Equal([second, first], margins.Select(m => m.Batch));
        Assert.All(margins, m => Assert.Equal(Outcome.Conforms, m.Binding!.Outcome));
        Assert.True(margins[0].Binding!.Margin > margins[1].Binding!.Margin);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Seasons_OwnCalendar_NamesTheNextDayAndWhatChanges(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.OwnArea("HARBOUR", ("summer", 5, 1, 9, 30, "EN228-A"), ("winter", 10, 1, 4, 30, "EN228-D"));
        await lab.Batch(area: "HARBOUR");

        var change = Assert.Single((await Read(lab, lab.Engineer)).Seasons!);

        Assert.Equal(("HARBOUR", new DateOnly(2026, 10, 1), 150), (change.Area, change.On, change.Days));
        Assert.Contains("DVPE min 45.0, max 60.0 kPa", change.Before, StringComparison.Ordinal);
        Assert.Contains("DVPE min 60.0, max 90.0 kPa", change.After, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Reference_Draft_WaitsForAnotherPerson(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        Done(await new Laboratory.Limits.KeepLimit(lab.Open, lab.Lab.Clock).Draft(lab.Manager, NewLimit("cargo", "EN228-A", 58m), Cancel));

        var own = (await Read(lab, lab.Manager)).Reference!;
        var other = (await Read(lab, lab.SecondManager)).Reference!;

        Assert.Equal(("limit", "cargo", "EN228-A", true), (own.Drafts[0].What, own.Drafts[0].Name, own.Drafts[0].Place, own.Drafts[0].Own));
        Assert.False(Assert.Single(other.Drafts).Own);
        Assert.True(own.FromMemory > 0);
    }

    private static Task<TodaySheet> Read(GasolineLab lab, Actor actor) => new ReadToday(lab.Open, lab.Lab.Clock).Run(actor, Cancel);
}
