using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Batches;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Instruments;

/// <summary>Checks and care of instruments: who, in which state, once.</summary>
public sealed class InstrumentRulesTests
{
    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Verification_SentTwice_AnswersWithTheFirstVerdict(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var command = Guid.NewGuid();

        var first = await lab.Verify(lab.Analyst, false, command: command);
        var again = await lab.Verify(lab.Analyst, true, command: command);

        Assert.Equal((AnswerKind.Done, false), (first.Kind, first.Value));
        Assert.Equal((AnswerKind.Repeated, false), (again.Kind, again.Value));
        Assert.Equal(2, await lab.Read(c => c.Verifications.CountAsync(TestContext.Current.CancellationToken)));
    }

    public static MatrixTheoryData<StorageEngine, string, bool> Bands => new(
        [StorageEngine.Sqlite, StorageEngine.Postgres], ["67.9", "69.1", "9.85 psi"], [true, false]);

    [Theory, MemberData(nameof(Bands))]
    public async Task Verification_BothEndsOfTheBand_AreInside(StorageEngine engine, string reading, bool inside)
    {
        await using var lab = await Create(engine);
        // 9.85 psi is 67.913 kPa.
        var (low, high) = inside ? ("67.9", "69.1") : ("69.2", "70.0");

        var answer = await new RecordVerification(lab.Open, lab.Lab.Clock).Run(
            lab.Analyst, new RecordVerification.Request(Guid.NewGuid(), Tester, "cyclopentane", null, reading, low, high, null, null), TestContext.Current.CancellationToken);

        Assert.Equal(inside, Done(answer));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Stop_ThenPutBack_IsForTheQualityManager(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var keep = new KeepInstrument(lab.Open);
        Done(await keep.Stop(lab.Analyst, Tester, await Version(lab), "cell leaks", TestContext.Current.CancellationToken));

        var twice = await keep.Stop(lab.Analyst, Tester, await Version(lab), "cell leaks", TestContext.Current.CancellationToken);
        var chemist = await keep.PutBack(lab.Chemist, Tester, await Version(lab), "new seal", TestContext.Current.CancellationToken);
        var manager = await keep.PutBack(lab.Manager, Tester, await Version(lab), "new seal", TestContext.Current.CancellationToken);
        var again = await keep.PutBack(lab.Manager, Tester, await Version(lab), "new seal", TestContext.Current.CancellationToken);

        Assert.Equal(
            [AnswerKind.Conflict, AnswerKind.Forbidden, AnswerKind.Done, AnswerKind.Conflict],
            [twice.Kind, chemist.Kind, manager.Kind, again.Kind]);
        Assert.Contains("out of service already: cell leaks", twice.Text, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Stop_ChangedMeanwhile_IsTold(StorageEngine engine)
    {
        await using var lab = await Create(engine);

        var answer = await new KeepInstrument(lab.Open).Stop(lab.Analyst, Tester, Guid.NewGuid(), "cell leaks", TestContext.Current.CancellationToken);

        Assert.Equal(AnswerKind.Conflict, answer.Kind);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Calibration_InTheFuture_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);

        var answer = await new KeepInstrument(lab.Open).Calibrated(
            lab.Analyst, Tester, await Version(lab), new DateOnly(2026, 5, 5), new DateOnly(2027, 5, 5), null, TestContext.Current.CancellationToken);

        Assert.Equal(AnswerKind.Conflict, answer.Kind);
        Assert.Contains("has not happened yet", answer.Text, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Add_CodeTaken_IsTold(StorageEngine engine)
    {
        await using var lab = await Create(engine);

        var answer = await new KeepInstrument(lab.Open).Add(lab.Manager, NewInstrument(Tester), TestContext.Current.CancellationToken);

        Assert.Equal(AnswerKind.Conflict, answer.Kind);
    }

    private static Task<Guid> Version(GasolineLab lab) =>
        lab.Read(c => c.Instruments.Select(i => i.Version).SingleAsync(TestContext.Current.CancellationToken));
}
