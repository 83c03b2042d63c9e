using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Batches;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Bench;

/// <summary>Reporting a determination: what stands against it, and that the interface is refused like the bench.</summary>
public sealed class ReportDeterminationTests
{
    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_InstrumentOutOfService_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var sample = await lab.Sample(null);
        await lab.Lab.Raw("UPDATE instruments SET in_service = " + (engine is StorageEngine.Sqlite ? "0" : "false"));

        await AssertRefused(lab, lab.NewDetermination(sample, "65.0"), Readiness.Rule, "Out of service");
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_CalibrationOverdue_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var sample = await lab.Sample(null);
        await lab.Lab.Raw("UPDATE instruments SET calibration_due_on = '2026-05-03'");

        await AssertRefused(lab, lab.NewDetermination(sample, "65.0"), Readiness.Rule, "Calibration was due on 2026-05-03");
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_CalibrationDueToday_Passes(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var sample = await lab.Sample(null);
        await lab.Lab.Raw("UPDATE instruments SET calibration_due_on = '2026-05-04'");

        Done(await lab.Report(lab.Analyst, lab.NewDetermination(sample, "65.0")));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_NoVerificationToday_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var sample = await lab.Sample(null);
        // 22:00 UTC is past midnight in Oslo: yesterday's verification no longer speaks for the instrument.
        lab.Lab.Clock.Advance(TimeSpan.FromHours(14));

        await AssertRefused(lab, lab.NewDetermination(sample, "65.0"), Readiness.Rule, "No verification fluid was measured on 2026-05-05");
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_VerificationOutOfBand_IsRefusedUntilAFreshBottle(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var sample = await lab.Sample(null);
        Done(await lab.Verify(lab.Analyst, false));

        await AssertRefused(lab, lab.NewDetermination(sample, "65.0"), Readiness.Rule, "outside its band");
        lab.Lab.Clock.Advance(TimeSpan.FromMinutes(10));
        Done(await lab.Verify(lab.Analyst, true));

        Done(await lab.Report(lab.Analyst, lab.NewDetermination(sample, "65.0")));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_MeasuredWhileOutOfBand_IsRefusedAfterwardsToo(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var sample = await lab.Sample(null);
        Done(await lab.Verify(lab.Analyst, false));
        var during = lab.Now.AddMinutes(1);
        lab.Lab.Clock.Advance(TimeSpan.FromMinutes(10));
        Done(await lab.Verify(lab.Analyst, true));

        await AssertRefused(lab, lab.NewDetermination(sample, "65.0") with { MeasuredAt = during }, Readiness.Rule, "outside its band");
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_OutsideTheVerifiedRange_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var sample = await lab.Sample(null);

        await AssertRefused(lab, lab.NewDetermination(sample, "130.1"), VerifiedRange.Rule, "7 to 130 kPa");
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_SecondTestOnAContainer_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine, InDuplicate);
        var sample = await lab.Sample(null);
        await lab.Measure(sample, "65.0");

        await AssertRefused(lab, lab.NewDetermination(sample, "65.1"), OneTestAContainer.Rule, "has been opened already", determinations: 1);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_OneContainerTwiceAtOnce_OneIsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine, InDuplicate);
        var sample = await lab.Sample(null);

        var answers = await Task.WhenAll(
            AtOnce(() => lab.Report(lab.Analyst, lab.NewDetermination(sample, "65.0"))),
            AtOnce(() => lab.Report(lab.SecondAnalyst, lab.NewDetermination(sample, "65.1", by: lab.SecondAnalyst))));

        Assert.Single(answers, a => a.Kind == AnswerKind.Done);
        Assert.Equal([OneTestAContainer.Rule], Rules(Assert.Single(answers, a => a.Kind == AnswerKind.Refused)));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_LastSealedContainer_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine, InDuplicate);
        var sample = await lab.Sample(null, 2);
        await lab.Measure(sample, "65.0", 2);

        await AssertRefused(lab, lab.NewDetermination(sample, "65.1"), RetainedPortion.Rule, "retained portion", determinations: 1);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_OnlyContainerOfASample_Passes(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var sample = await lab.Sample(null, 1);

        Done(await lab.Report(lab.Analyst, lab.NewDetermination(sample, "65.0")));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_RetainedPortion_IsKeptForThirtyDaysFromTheLastTest(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var sample = await lab.Sample(null, 2);
        await lab.Measure(sample, "65.0");

        var portion = await lab.Read(c => c.Containers.SingleAsync(k => k.Number == 2, TestContext.Current.CancellationToken));
        var other = await lab.Read(c => c.Samples.Include(s => s.Containers).ThenInclude(k => k.Openings).SingleAsync(TestContext.Current.CancellationToken));

        // 40 CFR 1090.1345: at least 30 days after testing is complete.
        Assert.Equal(new DateOnly(2026, 6, 3), portion.RetainUntil);
        Assert.NotNull(RetainedPortion.Check(other, other.Containers.Single(k => k.Number == 2), new DateOnly(2026, 6, 2)));
        Assert.Null(RetainedPortion.Check(other, other.Containers.Single(k => k.Number == 2), new DateOnly(2026, 6, 3)));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_SampleNotReceived_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var sample = Done(await new RegisterSample(lab.Open, lab.Lab.Clock).Run(
            lab.Analyst, lab.NewSample(null) with { ReceivedAt = null }, TestContext.Current.CancellationToken));

        await AssertRefused(lab, lab.NewDetermination(sample, "65.0"), ReceiptCondition.Rule, "not received yet");
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_LeakingContainer_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var sample = Done(await new RegisterSample(lab.Open, lab.Lab.Clock).Run(lab.Analyst, lab.NewSample(null) with
        {
            Containers = [new(ContainerKind.GlassBottle, 1000m, 75m, Leaking: true), new(ContainerKind.GlassBottle, 1000m, 75m), new(ContainerKind.GlassBottle, 1000m, 75m)],
            Verdict = ReceiptVerdict.ProceedWithDisclaimer,
            VerdictNote = "asked the shift chemist",
        }, TestContext.Current.CancellationToken));

        await AssertRefused(lab, lab.NewDetermination(sample, "65.0"), ReceiptCondition.Rule, "leaks");
        Done(await lab.Report(lab.Analyst, lab.NewDetermination(sample, "65.0", 2)));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_HandlingNotConfirmed_IsRefusedAtTheBench(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var request = lab.NewDetermination(await lab.Sample(null), "65.0");

        await AssertRefused(lab, request with { Handling = request.Handling with { Confirmed = [] } }, HandlingConfirmed.Rule, "Confirm:");
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_BlockingFinding_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var request = lab.NewDetermination(await lab.Sample(null), "65.0");

        await AssertRefused(lab, request with { Handling = request.Handling with { Phases = 2 } }, "two-phases", "two liquids");
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_AnotherPersonsReading_IsInvalidAtTheBench(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var sample = await lab.Sample(null);

        var answer = await lab.Report(lab.Analyst, lab.NewDetermination(sample, "65.0", by: lab.SecondAnalyst));

        Assert.Equal((AnswerKind.Invalid, "/measuredBy"), (answer.Kind, Assert.Single(answer.Problems).Field));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_MeasurerWithoutTheRight_IsInvalid(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var sample = await lab.Sample(null);

        var answer = await lab.Report(lab.Key, lab.NewDetermination(sample, "65.0", by: lab.Engineer));

        Assert.Equal((AnswerKind.Invalid, "/measuredBy"), (answer.Kind, Assert.Single(answer.Problems).Field));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_KeyWithoutOperator_CountsOnceTakenOn(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.Batch();
        var sample = await lab.Sample(batch);
        var id = Done(await lab.Report(lab.Key, lab.NewDetermination(sample, "65.0") with { MeasuredBy = null })).Id;
        var before = await lab.Sign(lab.Chemist, batch);

        var taking = new TakeOnDetermination(lab.Open, lab.Lab.Clock);
        Done(await taking.Run(lab.Manager, id, TestContext.Current.CancellationToken));
        var twice = await taking.Run(lab.Analyst, id, TestContext.Current.CancellationToken);

        Assert.Equal(AnswerKind.Refused, before.Kind);
        Assert.Contains(before.Problems, p => p.Message.Contains("waits for a person to take it on", StringComparison.Ordinal));
        Assert.Equal(AnswerKind.Conflict, twice.Kind);
        Assert.Equal(TestState.Reported, (await lab.Test(sample)).State);
        Assert.Equal([SecondPersonSigns.Rule], Rules(await lab.Sign(lab.Manager, batch)));
        Assert.Equal(AnswerKind.Done, (await lab.Sign(lab.Chemist, batch)).Kind);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_ByKeyForAPerson_CountsAsTheirs(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.Batch();
        Done(await lab.Report(lab.Key, lab.NewDetermination(await lab.Sample(batch), "65.0") with { MeasuredBy = " TOMAS.LIND " }));

        Assert.Equal([SecondPersonSigns.Rule], Rules(await lab.Sign(lab.Chemist, batch)));
        Assert.Equal(AnswerKind.Done, (await lab.Sign(lab.Manager, batch)).Kind);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_MethodNobodyAssigned_IsAddedAndCounts(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var sample = await lab.Sample(null);

        await lab.Measure(sample, "65.0", method: Astm);

        var test = await lab.Test(sample, Astm);
        Assert.Equal((TestState.Reported, 1), (test.State, test.Wanted));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_RemovesOnlyTheMeasurersDraft(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var sample = await lab.Sample(null);
        var test = await lab.Test(sample);
        var drafts = new SaveDraft(lab.Open, lab.Lab.Clock);
        Done(await drafts.Run(lab.Analyst, test.Id, new BenchEntry { TotalPressure = "65" }, TestContext.Current.CancellationToken));
        Done(await drafts.Run(lab.SecondAnalyst, test.Id, new BenchEntry { TotalPressure = "6" }, TestContext.Current.CancellationToken));

        await lab.Measure(sample, "65.0");

        var left = await lab.Read(c => c.Drafts.SingleAsync(TestContext.Current.CancellationToken));
        Assert.Equal(lab.SecondAnalyst.Id, left.PersonId);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Draft_OfNoTest_IsNotFound(StorageEngine engine)
    {
        await using var lab = await Create(engine);

        var answer = await new SaveDraft(lab.Open, lab.Lab.Clock).Run(lab.Analyst, Guid.NewGuid(), new BenchEntry(), TestContext.Current.CancellationToken);

        Assert.Equal(AnswerKind.NotFound, answer.Kind);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_DatabaseRefuses_IsAnAnswer(StorageEngine engine)
    {
        foreach (var rule in (string[])[GuardRules.ReadyInstrumentOnly, GuardRules.OneTestAContainer])
        {
            await using var lab = await Create(engine);
            var sample = await lab.Sample(null);
            await RefusingTrigger.Add(lab.Lab, "determinations", rule);

            await AssertRefused(lab, lab.NewDetermination(sample, "65.0"), rule, "");
        }
    }

    // At the bench and through the interface alike.
    private static async Task AssertRefused(GasolineLab lab, DeterminationRequest request, string rule, string words, int determinations = 0)
    {
        foreach (var actor in rule == HandlingConfirmed.Rule ? (Actor[])[lab.Analyst] : [lab.Analyst, lab.Key])
        {
            var answer = await lab.Report(actor, request with { CommandId = Guid.NewGuid() });

            Assert.Equal(AnswerKind.Refused, answer.Kind);
            Assert.Equal([rule], Rules(answer));
            Assert.Contains(words, answer.Text, StringComparison.Ordinal);
        }

        Assert.Equal(determinations, await lab.Read(c => c.Determinations.CountAsync(TestContext.Current.CancellationToken)));
    }
}
