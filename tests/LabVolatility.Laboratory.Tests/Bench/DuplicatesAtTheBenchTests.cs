using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Batches;
using LabVolatility.Laboratory.Tests.Storage;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Bench;

/// <summary>Duplicates within r, and what follows when they aren't. r = 1.5 kPa of DVPE; DVPE = 0.965 · ASVP − 3.78 kPa.</summary>
public sealed class DuplicatesAtTheBenchTests
{
    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Duplicate_Planned_WaitsForTheSecond(StorageEngine engine)
    {
        await using var lab = await Create(engine, InDuplicate);
        await lab.Precision();
        var batch = await lab.Batch();
        var sample = await lab.Sample(batch);
        await lab.Measure(sample, "65.0");
        var waiting = await lab.Test(sample);

        await lab.Measure(sample, "66.0", 2);

        Assert.Equal((TestState.Waiting, 2), (waiting.State, waiting.Wanted));
        Assert.Equal(TestState.Reported, (await lab.Test(sample)).State);
        var limit = await lab.OnlyLimit(batch, "EN228-A/DVPE");
        Assert.Equal((2, 59.4275m), (limit.Count, limit.Value));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Duplicates_Disagree_WaitForAStepOfTheTree(StorageEngine engine)
    {
        await using var lab = await Create(engine, FourInAll);
        await lab.Precision();
        var batch = await lab.Batch();
        var sample = await lab.Sample(batch, 5);
        await lab.Measure(sample, "63.0");

        await lab.Measure(sample, "65.0", 2);

        var test = await lab.Test(sample);
        Assert.Equal((TestState.Reported, 2), (test.State, test.Wanted));
        var assessed = await lab.Assess(batch);
        Assert.Equal(Outcome.Incomplete, assessed.Evidence.Outcome);
        Assert.False(assessed.Evidence.Samples[0].Usable);
        Assert.Contains(EvidenceRules.ReleaseConforms, Rules(await lab.Sign(lab.Chemist, batch)));
        Assert.Equal("further-results-are-agreed", Assert.Single(Rules(await lab.Report(lab.Analyst, lab.NewDetermination(sample, "64.0", 3)))));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task MostDivergent_OthersAgree_DoesNotCountInTheMean(StorageEngine engine)
    {
        await using var lab = await Create(engine, FourInAll);
        await lab.Precision();
        var batch = await lab.Batch();
        var sample = await lab.Sample(batch, 5);
        await lab.MeasureByTree(batch, sample, "61.0", "65.0", "65.2", "65.4");

        var limit = await lab.OnlyLimit(batch, "EN228-A/DVPE");

        // 0.965 · 65.2 − 3.78 = 59.138 kPa from the three that agree.
        Assert.Equal((3, 59.138m, Outcome.Conforms), (limit.Count, limit.Value, limit.Outcome));
        Assert.Equal(TestState.Reported, (await lab.Test(sample)).State);
        Assert.Contains("Set aside; the others agree", (await lab.Assess(batch)).Evidence.Samples[0].Duplicates, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task SeveralDiverge_AskForTheCause(StorageEngine engine)
    {
        await using var lab = await Create(engine, FourInAll);
        await lab.Precision();
        var batch = await lab.Batch();
        var sample = await lab.Sample(batch, 5);
        await lab.MeasureByTree(batch, sample, "58.0", "61.0", "64.0", "67.0");

        var test = await lab.Test(sample);

        Assert.Contains("find the cause", test.Why, StringComparison.Ordinal);
        Assert.Equal(RetestKind.HoldAndCall, (await lab.Next(batch)).Kind);
        Assert.Equal(AnswerKind.Refused, (await lab.Sign(lab.Chemist, batch)).Kind);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task CancelTest_WhileDuplicatesDisagree_DoesNotReleaseTheBatch(StorageEngine engine)
    {
        await using var lab = await Create(engine, FourInAll);
        await lab.Precision();
        var batch = await lab.Batch();
        var sample = await lab.Sample(batch, 5);
        await lab.Measure(sample, "63.0");
        await lab.Measure(sample, "65.0", 2);
        await lab.Step(batch);
        Done(await new CancelTest(lab.Open).Run(lab.Chemist, (await lab.Test(sample)).Id, "no bottle left", TestContext.Current.CancellationToken));

        var answer = await lab.Sign(lab.Chemist, batch);

        Assert.Equal((AnswerKind.Refused, EvidenceRules.ReleaseConforms), (answer.Kind, Assert.Single(Rules(answer))));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task PrecisionOfAnotherEdition_DoesNotJudge(StorageEngine engine)
    {
        await using var lab = await Create(engine, FourInAll);
        await lab.Precision(edition: "2007");
        var batch = await lab.Batch();
        var sample = await lab.Sample(batch);
        await lab.Measure(sample, "55.0");

        await lab.Measure(sample, "65.0", 2);

        Assert.Contains("repeatability is not set", (await lab.Test(sample)).Why, StringComparison.Ordinal);
        Assert.Equal(2, (await lab.OnlyLimit(batch, "EN228-A/DVPE")).Count);
    }

    // Two by plan, at most four in all: as the grade of a laboratory short of bottles.
    private static void FourInAll(Grade grade)
    {
        InDuplicate(grade);
        grade.ResultsInAll = 4;
    }
}
