using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Batches;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Bench;

/// <summary>Amending: with a reason, by who may, the earlier state stays readable.</summary>
public sealed class AmendDeterminationTests
{
    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Amend_Own_KeepsBothRevisions(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var id = await lab.Measure(await lab.Sample(null), "65.0");

        Assert.Equal(2, Done(await lab.Amend(lab.Analyst, id, "64,0")));

        var stored = await lab.Read(c => c.DeterminationRevisions.OrderBy(r => r.Revision).ToListAsync(TestContext.Current.CancellationToken));
        Assert.Equal(["65.0", "64,0"], stored.Select(r => r.Readings.TotalPressure!.Typed));
        Assert.Equal([null, "misread by one line"], stored.Select(r => r.Reason));
        Assert.Equal(stored[0].Handling.FillPercent, stored[1].Handling.FillPercent);
        Assert.Equal(4, await lab.Read(c => c.Results.CountAsync(TestContext.Current.CancellationToken)));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Amend_WithoutReason_IsInvalid(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var id = await lab.Measure(await lab.Sample(null), "65.0");

        var answer = await lab.Amend(lab.Analyst, id, "64.0", reason: " ");

        Assert.Equal((AnswerKind.Invalid, AmendDetermination.Rule), (answer.Kind, Assert.Single(Rules(answer))));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task SetAside_WithoutCause_IsInvalid(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var id = await lab.Measure(await lab.Sample(null), "65.0");

        var answer = await lab.Amend(lab.Analyst, id, null, setAside: true);

        Assert.Equal((AnswerKind.Invalid, "/assignableCause"), (answer.Kind, Assert.Single(answer.Problems).Field));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task SetAside_WithCause_NoLongerCountsAndStaysVisible(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.Batch();
        var sample = await lab.Sample(batch);
        var id = await lab.Measure(sample, "65.0");

        Done(await lab.Amend(lab.Analyst, id, null, setAside: true, cause: "syringe leaked"));

        var seen = Assert.Single((await lab.Assess(batch)).Evidence.Samples[0].Determinations);
        Assert.Equal("set aside: syringe leaked", seen.DoesNotCount);
        Assert.Equal(TestState.Waiting, (await lab.Test(sample)).State);
        Assert.Equal(Outcome.Incomplete, (await lab.Assess(batch)).Evidence.Outcome);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task SetAside_WithoutOperator_NoLongerWaits(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.Batch();
        var sample = await lab.Sample(batch);
        var id = Done(await lab.Report(lab.Key, lab.NewDetermination(sample, "20.0") with { MeasuredBy = null })).Id;
        Done(await lab.Amend(lab.Manager, id, null, setAside: true, cause: "rinse run sent as a sample"));
        await lab.Measure(sample, "65.0", 2);

        Assert.Equal(AnswerKind.Done, (await lab.Sign(lab.Chemist, batch)).Kind);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Amend_AnotherPersons_IsForTheChemist(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var id = await lab.Measure(await lab.Sample(null), "65.0");

        var colleague = await lab.Amend(lab.SecondAnalyst, id, "64.0");
        var chemist = await lab.Amend(lab.Chemist, id, "64.0");

        Assert.Equal((AnswerKind.Forbidden, AnswerKind.Done), (colleague.Kind, chemist.Kind));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Amend_AfterDecision_IsForTheChemist(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.Batch();
        var id = await lab.Measure(await lab.Sample(batch), "65.0");
        Done(await lab.Sign(lab.Chemist, batch));

        var analyst = await lab.Amend(lab.Analyst, id, "64.0");
        Done(await lab.Sign(lab.Chemist, batch, DecisionKind.Withdraw));
        var afterWithdrawal = await lab.Amend(lab.Analyst, id, "64.0");

        Assert.Equal((AnswerKind.Forbidden, AnswerKind.Done), (analyst.Kind, afterWithdrawal.Kind));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Amend_ByKey_IsForbidden(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var id = await lab.Measure(await lab.Sample(null), "65.0");

        Assert.Equal(AnswerKind.Forbidden, (await lab.Amend(lab.Manager with { IsKey = true }, id, "64.0")).Kind);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Amend_TwoAtOnce_OneIsToldWhatIsInForce(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var id = await lab.Measure(await lab.Sample(null), "65.0");

        var answers = await Task.WhenAll(
            AtOnce(() => lab.Amend(lab.Chemist, id, "64.0")), AtOnce(() => lab.Amend(lab.Manager, id, "64.5")));

        Assert.Single(answers, a => a.Kind == AnswerKind.Done);
        var beaten = Assert.Single(answers, a => a.Kind == AnswerKind.Conflict);
        Assert.Equal(2, beaten.Value);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Amend_OutsideTheVerifiedRange_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var id = await lab.Measure(await lab.Sample(null), "65.0");

        Assert.Equal([VerifiedRange.Rule], Rules(await lab.Amend(lab.Analyst, id, "131.0")));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Amend_SameCommandTwice_AmendsOnce(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var id = await lab.Measure(await lab.Sample(null), "65.0");
        var command = Guid.NewGuid();

        var answers = await Task.WhenAll(Enumerable.Range(0, 2).Select(_ => AtOnce(() => lab.Amend(lab.Analyst, id, "64.0", command: command))));

        Assert.Equal([AnswerKind.Done, AnswerKind.Repeated], answers.Select(a => a.Kind).Order());
        Assert.Equal([2, 2], answers.Select(a => a.Value));
        Assert.Equal(2, await lab.Read(c => c.DeterminationRevisions.CountAsync(TestContext.Current.CancellationToken)));
    }
}
