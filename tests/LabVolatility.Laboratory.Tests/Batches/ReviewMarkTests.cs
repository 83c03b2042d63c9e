using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Batches;

/// <summary>A release whose evidence changes is marked for review, and everybody sees why.</summary>
public sealed class ReviewMarkTests
{
    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Amendment_AfterRelease_MarksIt(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.Batch();
        var id = await lab.Measure(await lab.Sample(batch), "65.0");
        Done(await lab.Sign(lab.Chemist, batch));

        Done(await lab.Amend(lab.Manager, id, "64.0"));

        await AssertMarked(lab, batch, "misread by one line");
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task FurtherDetermination_AfterRelease_MarksIt(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.Batch();
        var sample = await lab.Sample(batch);
        await lab.Measure(sample, "65.0");
        Done(await lab.Sign(lab.Chemist, batch));

        await lab.Measure(sample, "65.1", 2, method: Astm);

        await AssertMarked(lab, batch, "further determination");
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task NewSample_AfterRelease_MarksIt(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.ReleasedBatch();

        await lab.Sample(batch);

        await AssertMarked(lab, batch, "was registered");
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task LateMovement_BeforeTheRelease_MarksItAndVoidsTheSample(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.ReleasedBatch();

        Done(await lab.Move(lab.Engineer, lab.Now.AddMinutes(-30)));

        await AssertMarked(lab, batch, "receipt in tank T-101");
        Assert.Contains("void for a decision", (await lab.Assess(batch)).Evidence.Samples[0].Void, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Movement_AtTheVeryMomentOfTheRelease_MarksIt(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.ReleasedBatch();

        Done(await lab.Move(lab.Engineer, lab.Now));

        await AssertMarked(lab, batch, "receipt in tank T-101");
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Movement_AfterTheRelease_LeavesIt(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.ReleasedBatch();
        lab.Lab.Clock.Advance(TimeSpan.FromHours(1));

        Done(await lab.Move(lab.Engineer, lab.Now));

        Assert.Empty((await lab.Assess(batch)).ReviewMarks);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Verification_OutOfBandLaterThatDay_MarksIt(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.ReleasedBatch();
        lab.Lab.Clock.Advance(TimeSpan.FromHours(5));

        Assert.False(Done(await lab.Verify(lab.Analyst, false)));

        await AssertMarked(lab, batch, "outside its band");
        Assert.Contains((await lab.Assess(batch)).Evidence.Blocks, b => b.Contains("out of its band", StringComparison.Ordinal));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Verification_InBandAgain_LeavesIt(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.ReleasedBatch();
        lab.Lab.Clock.Advance(TimeSpan.FromHours(5));

        Assert.True(Done(await lab.Verify(lab.Analyst, true)));

        Assert.Empty((await lab.Assess(batch)).ReviewMarks);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Verification_OutOfBandTheNextDay_LeavesIt(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.ReleasedBatch();
        lab.Lab.Clock.Advance(TimeSpan.FromHours(15));

        Done(await lab.Verify(lab.Analyst, false));

        Assert.Empty((await lab.Assess(batch)).ReviewMarks);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Release_InstrumentInDoubt_WaitsForAFreshBottle(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch();
        lab.Lab.Clock.Advance(TimeSpan.FromHours(5));
        Done(await lab.Verify(lab.Analyst, false));

        var doubtful = await lab.Sign(lab.Chemist, batch);
        lab.Lab.Clock.Advance(TimeSpan.FromMinutes(20));
        Done(await lab.Verify(lab.Analyst, true));
        var cleared = await lab.Sign(lab.Chemist, batch);

        Assert.Equal((AnswerKind.Refused, EvidenceRules.NothingWaits), (doubtful.Kind, Assert.Single(Rules(doubtful))));
        Assert.Equal(AnswerKind.Done, cleared.Kind);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task BatchChange_AfterRelease_MarksIt(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.ReleasedBatch();
        var stored = await lab.Read(c => c.Batches.SingleAsync(TestContext.Current.CancellationToken));

        Done(await new RegisterBatch(lab.Open, lab.Lab.Clock).Change(
            lab.Engineer, batch, stored.Version, lab.NewBatch() with { Grade = null, Until = new DateOnly(2026, 6, 1) }, TestContext.Current.CancellationToken));

        await AssertMarked(lab, batch, "was changed");
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Precision_ApprovedAfterRelease_MarksIt(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.ReleasedBatch();

        await lab.Precision();

        await AssertMarked(lab, batch, "precision of EN 13016-1 was changed");
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Limit_ApprovedAfterRelease_MarksTheBatchesItHoldsFor(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var concerned = await lab.ReleasedBatch();
        var other = await lab.MeasuredBatch("66.0", area: "EN228-B");
        Done(await lab.Sign(lab.Chemist, other));

        await lab.OwnLimit("contract 7", "EN228-A", maximum: 59.5m);

        await AssertMarked(lab, concerned, "the limit contract 7 was changed");
        Assert.Empty((await lab.Assess(other)).ReviewMarks);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Hold_EvidenceChanges_IsNotMarked(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.Batch();
        var id = await lab.Measure(await lab.Sample(batch), "65.0");
        Done(await lab.Sign(lab.Chemist, batch, DecisionKind.Hold));

        Done(await lab.Amend(lab.Manager, id, "64.0"));

        Assert.Empty((await lab.Assess(batch)).ReviewMarks);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Release_AfterReview_IsSignedAgainAndHolds(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.Batch();
        var id = await lab.Measure(await lab.Sample(batch), "65.0");
        Done(await lab.Sign(lab.Chemist, batch));
        lab.Lab.Clock.Advance(TimeSpan.FromHours(1));
        Done(await lab.Move(lab.Engineer, lab.Now));
        lab.Lab.Clock.Advance(TimeSpan.FromHours(1));
        Done(await lab.Amend(lab.Manager, id, "64.0"));

        var again = Done(await lab.Sign(lab.Chemist, batch));

        // The tank moved after the first release: that must not void the sample for the second one, then or later.
        var after = await lab.Assess(batch);
        Assert.Equal((2, false), (again.Sequence, after.InForce!.ForReview));
        Assert.Null(after.Evidence.Samples[0].Void);
        Assert.Equal(after.EvidenceHash, after.Decisions[^1].EvidenceHash);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Withdrawn_ThenDecidedAgain_KeepsAllThree(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.ReleasedBatch();
        Done(await lab.Sign(lab.Manager, batch, DecisionKind.Withdraw, "wrong tank named"));

        Done(await lab.Sign(lab.Chemist, batch, DecisionKind.Hold));

        var after = await lab.Assess(batch);
        Assert.Equal([DecisionKind.Release, DecisionKind.Withdraw, DecisionKind.Hold], after.Decisions.Select(d => d.Kind));
        Assert.Equal(DecisionKind.Hold, after.InForce!.Kind);
    }

    private static async Task AssertMarked(GasolineLab lab, string batch, string cause)
    {
        var after = await lab.Assess(batch);
        Assert.True(after.InForce!.ForReview);
        Assert.Contains(cause, Assert.Single(after.ReviewMarks).Cause, StringComparison.Ordinal);
    }
}
