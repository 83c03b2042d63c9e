using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Batches;

/// <summary>The list of batches, and one batch with its story.</summary>
public sealed class ReadBatchesTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task List_OpenAndDecided_ShowsOutcomeNowAndAsFrozen(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var released = await lab.ReleasedBatch();
        lab.Lab.Clock.Advance(TimeSpan.FromMinutes(1));
        var beyond = await lab.MeasuredBatch("67.0");
        lab.Lab.Clock.Advance(TimeSpan.FromMinutes(1));
        var empty = await lab.Batch();

        var page = await new ReadBatches(lab.Open).Run(new BatchesFilter(), Cancel);

        Assert.Equal(
            [(empty, Outcome.Incomplete, (DecisionKind?)null), (beyond, Outcome.DoesNotConform, null), (released, Outcome.Conforms, DecisionKind.Release)],
            page.Lines.Select(l => (l.Batch.Number, l.Outcome, l.InForce?.Kind)));
        Assert.Null(page.Next);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task List_ByStanding_FollowsTheDecisionInForce(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var released = await lab.ReleasedBatch();
        var withdrawn = await lab.ReleasedBatch();
        Done(await lab.Sign(lab.Chemist, withdrawn, DecisionKind.Withdraw));
        var held = await lab.Batch();
        Done(await lab.Sign(lab.Chemist, held, DecisionKind.Hold));
        var rejected = await lab.Batch();
        Done(await lab.Sign(lab.Chemist, rejected, DecisionKind.Reject));

        async Task<IEnumerable<string>> Numbers(BatchStanding standing) =>
            (await new ReadBatches(lab.Open).Run(new BatchesFilter(Standing: standing), Cancel)).Lines.Select(l => l.Batch.Number);

        Assert.Equal([released], await Numbers(BatchStanding.Released));
        Assert.Equal([withdrawn], await Numbers(BatchStanding.Waiting));
        Assert.Equal([held], await Numbers(BatchStanding.OnHold));
        Assert.Equal([rejected], await Numbers(BatchStanding.Rejected));
        Assert.Empty(await Numbers(BatchStanding.ForReview));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task List_ReleaseWhoseBatchChanged_IsForReview(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.ReleasedBatch();
        var sheet = await new ReadBatch(lab.Open, lab.Lab.Clock).Run(batch, Cancel);
        Done(await new RegisterBatch(lab.Open, lab.Lab.Clock).Change(
            lab.Chemist, batch, sheet!.Batch.Version, lab.NewBatch() with { Until = new DateOnly(2026, 5, 25) }, Cancel));

        var page = await new ReadBatches(lab.Open).Run(new BatchesFilter(Standing: BatchStanding.ForReview), Cancel);

        Assert.True(Assert.Single(page.Lines).InForce!.ForReview);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task List_LongerThanAPage_GoesOnWhereItEnded(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var slot = lab.Now.AddHours(5);
        var numbers = Enumerable.Range(1, ReadBatches.PageSize + 3).Select(i => $"P-{i:000}").ToList();
        await lab.Lab.Add([.. numbers.Select(n => new Batch
        {
            Id = Guid.CreateVersion7(), Number = n, GradeCode = European, CreatedAt = lab.Now, CreatedBy = lab.Chemist.Id,
            From = new DateOnly(2026, 5, 10), Until = new DateOnly(2026, 5, 20), NeededBy = slot,
        })]);
        var read = new ReadBatches(lab.Open);

        foreach (var byNeed in new[] { false, true })
        {
            var first = await read.Run(new BatchesFilter(ByNeed: byNeed), Cancel);
            var second = await read.Run(new BatchesFilter(ByNeed: byNeed, After: first.Next), Cancel);

            Assert.Equal((ReadBatches.PageSize, 3, null), (first.Lines.Count, second.Lines.Count, second.Next));
            Assert.Equal(numbers, first.Lines.Concat(second.Lines).Select(l => l.Batch.Number).Order(StringComparer.Ordinal));
        }
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task List_TypedInSmallLetters_FindsTankAndNumber(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.Batch();
        await lab.Batch(change: r => r with { Tank = "T-102" });

        var byTank = await new ReadBatches(lab.Open).Run(new BatchesFilter("t-101"), Cancel);
        var byNumber = await new ReadBatches(lab.Open).Run(new BatchesFilter(batch.ToLowerInvariant()), Cancel);

        Assert.Equal([batch], byTank.Lines.Select(l => l.Batch.Number));
        Assert.Equal([batch], byNumber.Lines.Select(l => l.Batch.Number));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task WorkedOutTogether_EvidenceIsWhatEachGivesAlone(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Precision();
        string[] batches = [await lab.ReleasedBatch(), await lab.MeasuredBatch("67.0"), await lab.MeasuredBatch("9.1 psi", American, "US-9.0"), await lab.Batch()];
        // A movement after the first release voids the sample of the batch that nobody decided on, and only that.
        Done(await lab.Move(lab.Chemist, lab.Now.AddMinutes(5)));

        await using var context = lab.Open();
        var ids = context.Batches.ToDictionary(b => b.Number, b => b.Id);
        var together = await BatchAssessing.WorkOutAllAsync(context, [.. ids.Values], Cancel);

        foreach (var batch in batches)
            Assert.Equal((await lab.Assess(batch)).EvidenceHash, EvidenceText.Hash(EvidenceText.Of(together[ids[batch]])));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Story_DecidedAmendedWithdrawn_TellsWhoAndWhy(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.Batch();
        var determination = await lab.Measure(await lab.Sample(batch), "65.0");
        lab.Lab.Clock.Advance(TimeSpan.FromMinutes(10));
        Done(await lab.Sign(lab.Chemist, batch));
        lab.Lab.Clock.Advance(TimeSpan.FromMinutes(10));
        Done(await lab.Amend(lab.Manager, determination, "66.0"));
        lab.Lab.Clock.Advance(TimeSpan.FromMinutes(10));
        Done(await lab.Sign(lab.Chemist, batch, DecisionKind.Withdraw, "amended since"));

        var story = (await new ReadBatch(lab.Open, lab.Lab.Clock).Run(batch, Cancel))!.Story;

        Assert.Equal("decision withdrawn", story[0].What);
        Assert.Equal(("Tomas Lind, shift chemist", "amended since"), (story[0].Who, story[0].Why));
        Assert.Contains(story, e => e.Review);
        Assert.Contains(story, e => e.What.EndsWith("amended", StringComparison.Ordinal) && e.Who == lab.Manager.Name && e.Why == "misread by one line");
        Assert.Equal("batch registered", story[^1].What);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Read_NoSuchBatch_IsNull(StorageEngine engine)
    {
        await using var lab = await Create(engine);

        Assert.Null(await new ReadBatch(lab.Open, lab.Lab.Clock).Run("nothing", Cancel));
    }
}
