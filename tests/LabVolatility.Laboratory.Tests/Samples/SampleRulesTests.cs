using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Batches;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Samples;

/// <summary>Movements, departures at receipt, due dates and tanks.</summary>
public sealed class SampleRulesTests
{
    public static MatrixTheoryData<StorageEngine, MovementKind> Movements =>
        new([StorageEngine.Sqlite, StorageEngine.Postgres], Enum.GetValues<MovementKind>());

    [Theory, MemberData(nameof(Movements))]
    public async Task Movement_AfterSampling_VoidsUnlessProductOnlyLeft(StorageEngine engine, MovementKind kind)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch();

        Done(await lab.Move(lab.Engineer, lab.Now.AddMinutes(-10), kind));
        var answer = await lab.Sign(lab.Chemist, batch);

        Assert.Equal(kind is MovementKind.Delivery ? AnswerKind.Done : AnswerKind.Refused, answer.Kind);
        if (kind is not MovementKind.Delivery)
            Assert.Contains("draw a new one", answer.Text, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Movement_BeforeSamplingOrInAnotherTank_LeavesTheSample(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch();

        Done(await lab.Move(lab.Engineer, lab.Now.AddHours(-3)));
        Done(await lab.Move(lab.Engineer, lab.Now.AddMinutes(-10), tank: "T-102"));

        Assert.Equal(AnswerKind.Done, (await lab.Sign(lab.Chemist, batch)).Kind);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Movement_OfTheSamplePointsTank_VoidsTheSample(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Lab.Add(new SamplePoint { Code = "SP-2", Name = "Tank 102, outlet", TankCode = "T-102" });
        var batch = await lab.Batch(change: b => b with { Tank = null });
        var sample = Done(await Register(lab, lab.NewSample(batch) with { SamplePoint = "SP-2" }));
        await lab.Measure(sample, "65.0");

        Done(await lab.Move(lab.Engineer, lab.Now, tank: "T-102"));

        Assert.NotNull((await lab.Assess(batch)).Evidence.Samples[0].Void);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Movement_OfATankNamedLater_VoidsTheSample(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch(change: b => b with { Tank = null });
        var stored = await lab.Read(c => c.Batches.SingleAsync(TestContext.Current.CancellationToken));
        Done(await new Laboratory.Batches.RegisterBatch(lab.Open, lab.Lab.Clock).Change(
            lab.Engineer, batch, stored.Version, lab.NewBatch() with { Grade = null }, TestContext.Current.CancellationToken));

        Done(await lab.Move(lab.Engineer, lab.Now));

        Assert.NotNull((await lab.Assess(batch)).Evidence.Samples[0].Void);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task SamplePoint_OfAnotherTank_IsInvalid(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Lab.Add(new SamplePoint { Code = "SP-2", Name = "Tank 102, outlet", TankCode = "T-102" });

        var answer = await Register(lab, lab.NewSample(null) with { SamplePoint = "SP-2", Tank = GasolineLab.Tank });

        Assert.Equal((AnswerKind.Invalid, "/samplePoint"), (answer.Kind, Assert.Single(answer.Problems).Field));
    }

    public static MatrixTheoryData<StorageEngine, string> Conditions =>
        new([StorageEngine.Sqlite, StorageEngine.Postgres], ["leaks", "seal", "warm", "underfilled", "overfull"]);

    [Theory, MemberData(nameof(Conditions))]
    public async Task Departure_AtReceipt_IsDecidedWithANote(StorageEngine engine, string what)
    {
        await using var lab = await Create(engine);
        var odd = new ContainerRequest(
            ContainerKind.GlassBottle, 1000m, what switch { "underfilled" => 69m, "overfull" => 86m, _ => 75m },
            what == "warm" ? "31 degC" : "4", "A17", what != "seal", what == "leaks");
        var request = lab.NewSample(null) with { Containers = [odd, odd] };

        var undecided = await Register(lab, request);
        var unexplained = await Register(lab, request with { Verdict = ReceiptVerdict.ProceedWithDisclaimer });
        var decided = await Register(lab, request with { Verdict = ReceiptVerdict.ProceedWithDisclaimer, VerdictNote = "asked the customer" });

        Assert.Equal((AnswerKind.Invalid, ReceiptCondition.Rule), (undecided.Kind, Assert.Single(Rules(undecided))));
        Assert.Equal((AnswerKind.Invalid, "/verdictNote"), (unexplained.Kind, Assert.Single(unexplained.Problems).Field));
        Assert.Equal(AnswerKind.Done, decided.Kind);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Resample_AtReceipt_ClosesTheSample(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.Batch();
        var sample = Done(await Register(lab, lab.NewSample(batch) with { Verdict = ReceiptVerdict.Resample, VerdictNote = "bottle of another tank" }));

        Assert.Equal(TestState.Cancelled, (await lab.Test(sample)).State);
        Assert.Contains("No sample of the batch counts for a decision: draw a new one.", (await lab.Assess(batch)).Evidence.Blocks);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Verdict_BeforeReceipt_IsInvalid(StorageEngine engine)
    {
        await using var lab = await Create(engine);

        var answer = await Register(lab, lab.NewSample(null) with { ReceivedAt = null, Verdict = ReceiptVerdict.Reject, VerdictNote = "late" });

        Assert.Equal((AnswerKind.Invalid, "/verdict"), (answer.Kind, Assert.Single(answer.Problems).Field));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Receive_Announced_CountsTheHoursFromReceipt(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var sample = Done(await Register(lab, lab.NewSample(null) with { ReceivedAt = null }));
        lab.Lab.Clock.Advance(TimeSpan.FromHours(6));

        Done(await Receive(lab, sample));
        var twice = await Receive(lab, sample);

        Assert.Equal(lab.Now.AddHours(4), (await lab.Test(sample)).DueAt);
        Assert.Equal(AnswerKind.Conflict, twice.Kind);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Numbers_GivenAtOnce_AreDistinctWithoutAGap(StorageEngine engine)
    {
        await using var lab = await Create(engine);

        var numbers = await Task.WhenAll(Enumerable.Range(0, 40).Select(_ => AtOnce(() => lab.Sample(null))));

        Assert.Equal(Enumerable.Range(1, 40), numbers.Select(n => int.Parse(n.AsSpan(3, 5), System.Globalization.CultureInfo.InvariantCulture)).Order());
    }

    private static Task<Answer<string>> Register(GasolineLab lab, SampleRequest request) =>
        new RegisterSample(lab.Open, lab.Lab.Clock).Run(lab.Analyst, request with { CommandId = Guid.NewGuid() }, TestContext.Current.CancellationToken);

    private static async Task<Answer<string>> Receive(GasolineLab lab, string sample)
    {
        var stored = await lab.Read(c => c.Samples.SingleAsync(s => s.Number == sample, TestContext.Current.CancellationToken));
        return await new ReceiveSample(lab.Open, lab.Lab.Clock).Run(
            lab.Analyst, new ReceiveSample.Request(sample, stored.Version, lab.NewSample(null).Containers, ReceiptVerdict.AsExpected, null),
            TestContext.Current.CancellationToken);
    }
}
