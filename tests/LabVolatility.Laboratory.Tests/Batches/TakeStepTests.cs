using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Batches;

/// <summary>The tree agreed beforehand, from the finding to the act. DVPE = 0.965 · ASVP − 3.78 kPa; r = 1.5, R = 3.0 kPa.</summary>
public sealed class TakeStepTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    // The two differ by 0.965 · 1.7 = 1.6405; the third is within 1.2990 of the others' mean (ISO 4259-2, n = 3).
    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task DuplicatesDiffer_ThirdContainer_MakesTheMeanOfThree(StorageEngine engine)
    {
        await using var lab = await Create(engine, InDuplicate);
        await lab.Precision();
        var batch = await lab.Batch();
        var sample = await lab.Sample(batch, 5);
        await lab.Measure(sample, "63.0");
        await lab.Measure(sample, "64.7", 2);
        var asked = await lab.Next(batch);

        await lab.Step(batch);
        var waiting = await lab.Next(batch);
        var test = await lab.Test(sample);
        await lab.Measure(sample, "63.85", 3);

        Assert.Equal($"Open container 3 of sample {sample} (step 1 of 3).", asked.Words);
        Assert.Contains("differ by 1.6405; r is 1.5", asked.Found, StringComparison.Ordinal);
        Assert.Equal(FactStatus.CommonPractice, asked.Status);
        Assert.Null(waiting.Kind);
        Assert.Contains("waits at the bench for 1 more", waiting.Words, StringComparison.Ordinal);
        Assert.Equal((TestState.Waiting, 3), (test.State, test.Wanted));
        var sheet = await lab.Sheet(batch);
        Assert.Null(sheet.Next);
        Assert.Equal((3, 57.83525m), (sheet.Evidence.Limits[0].Count, sheet.Evidence.Limits[0].Value));
        Assert.Equal(("Tomas Lind", 1, asked.Found), (sheet.Evidence.Steps[0].By, sheet.Evidence.Steps[0].Place, sheet.Evidence.Steps[0].Reason));
        Assert.Contains(sheet.Story, e => e.What == "step 1 of 3 taken: test 1 more sealed container");
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task DoesNotConform_OneMoreContainer_ThenTheHoldIsSigned(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Precision();
        var batch = await lab.MeasuredBatch("67.0");
        var sample = (await lab.Assess(batch)).Evidence.Samples[0].Number;
        await lab.Step(batch);
        await lab.Measure(sample, "67.2", 2);
        var ended = await lab.Next(batch);

        var asStep = await lab.Step(lab.Chemist, TakeStepRequest.Of(batch, ended));
        Done(await lab.Sign(lab.Chemist, batch, DecisionKind.Hold));

        Assert.Equal(RetestKind.HoldAndCall, ended.Kind);
        Assert.Equal((AnswerKind.Refused, TakeStep.Rule), (asStep.Kind, Assert.Single(Rules(asStep))));
        var onHold = await lab.Next(batch);
        Assert.Null(onHold.Kind);
        Assert.Contains("On hold by Tomas Lind", onHold.Words, StringComparison.Ordinal);
        Assert.Equal(2, (await lab.OnlyLimit(batch, "EN228-A/DVPE")).Count);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task OnlyTheRetainedPortionLeft_PassesOverToTheHold(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Precision();
        var batch = await lab.Batch();
        await lab.Measure(await lab.Sample(batch, 2), "67.0");

        var next = await lab.Next(batch);

        Assert.Equal((RetestKind.HoldAndCall, 2), (next.Kind, next.Place));
        Assert.Contains("retained portion", Assert.Single(next.Passed), StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task SampleVoid_Resample_TakesItsPlaceOnceReceived(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Precision();
        var batch = await lab.MeasuredBatch("67.0");
        Done(await lab.Move(lab.Engineer, lab.Now.AddMinutes(-30)));
        var asked = await lab.Next(batch);
        await lab.Step(batch);
        var called = (await lab.Assess(batch)).Evidence.Samples.Single(s => s.ResampleOf is not null);
        var onItsWay = await lab.Next(batch);
        lab.Lab.Clock.Advance(TimeSpan.FromHours(1));

        var nameless = await Receive(lab, called.Number, null, null);
        Done(await Receive(lab, called.Number, lab.Now.AddMinutes(-20), "Ola Vik"));
        await lab.Measure(called.Number, "65.0");

        Assert.Equal((RetestOccasion.SampleVoid, RetestKind.Resample), (asked.Occasion, asked.Kind));
        Assert.Equal((SampleState.Announced, 3), (called.State, called.Containers.Count));
        Assert.Contains($"Waits for {called.Number}", onItsWay.Words, StringComparison.Ordinal);
        Assert.Equal(["/sampledAt", "/sampledBy"], nameless.Problems.Select(p => p.Field).Order());
        var limit = await lab.OnlyLimit(batch, "EN228-A/DVPE");
        Assert.Equal((1, 58.945m), (limit.Count, limit.Value));
        Assert.Null((await lab.Sheet(batch)).Next);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Resample_CalledForAndNotCome_StandsAgainstARelease(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch();
        Done(await lab.Move(lab.Engineer, lab.Now.AddMinutes(-30)));
        await lab.Step(batch);

        var answer = await lab.Sign(lab.Manager, batch);

        Assert.Contains(answer.Problems, p => p.Rule == EvidenceRules.NothingWaits && p.Message.Contains("was called for and has not come", StringComparison.Ordinal));
    }

    // The original was neither void nor set aside: both stand, and what differs by more than r is not averaged.
    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Resample_OfASampleThatStands_DoesNotReplaceIt(StorageEngine engine)
    {
        await using var lab = await Create(engine, g => g.Tree = new RetestTree(
            [new(RetestOccasion.DoesNotConform, [new(RetestKind.Resample), new(RetestKind.HoldAndCall)])]));
        await lab.Precision();
        var batch = await lab.MeasuredBatch("67.0");
        await lab.Step(batch);
        var called = (await lab.Assess(batch)).Evidence.Samples.Single(s => s.ResampleOf is not null).Number;
        lab.Lab.Clock.Advance(TimeSpan.FromHours(1));
        Done(await Receive(lab, called, lab.Now.AddMinutes(-20), "Ola Vik"));

        await lab.Measure(called, "64.0");

        var evidence = (await lab.Assess(batch)).Evidence;
        Assert.Equal((1, 60.875m), (evidence.Limits[0].Count, evidence.Limits[0].Value));
        Assert.Contains("neither void nor set aside: both count", Assert.Single(evidence.Levels).Why, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task TwoChemistsAtOnce_OneTakesTheStep(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Precision();
        var batch = await lab.MeasuredBatch("67.0");
        var advice = await lab.Next(batch);

        var answers = await Task.WhenAll(
            AtOnce(() => lab.Step(lab.Chemist, TakeStepRequest.Of(batch, advice))),
            AtOnce(() => lab.Step(lab.Manager, TakeStepRequest.Of(batch, advice))));

        Assert.Equal([AnswerKind.Done, AnswerKind.Conflict], answers.Select(a => a.Kind).Order());
        Assert.Equal(1, await lab.Read(c => c.StepsTaken.CountAsync(Cancel)));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task SameCommandAgain_TakesNothingTwice(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Precision();
        var batch = await lab.MeasuredBatch("67.0");
        var request = TakeStepRequest.Of(batch, await lab.Next(batch));
        var first = Done(await lab.Step(lab.Chemist, request));

        var again = await lab.Step(lab.Chemist, request);

        Assert.Equal((AnswerKind.Repeated, first), (again.Kind, again.Value));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task TreeChangedAfterRelease_LeavesTheDecisionAlone(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Precision();
        var batch = await lab.ReleasedBatch();
        var grade = await lab.Read(c => c.Grades.AsNoTracking().FirstAsync(g => g.Code == European, Cancel));
        grade.Tree = new RetestTree([]);

        Done(await new KeepGrade(lab.Open, lab.Lab.Clock).Change(lab.Manager, grade.Version, grade, Cancel));

        Assert.False((await lab.Assess(batch)).InForce!.ForReview);
    }

    private static async Task<Answer<string>> Receive(GasolineLab lab, string number, DateTimeOffset? at, string? by)
    {
        var version = await lab.Read(c => c.Samples.Where(s => s.Number == number).Select(s => s.Version).FirstAsync(Cancel));
        return await new ReceiveSample(lab.Open, lab.Lab.Clock).Run(
            lab.Analyst, new ReceiveSample.Request(number, version, lab.NewSample(null).Containers, ReceiptVerdict.AsExpected, null, at, by), Cancel);
    }
}
