using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Batches;

/// <summary>The same command sent again, also at the same moment, is done once and answered alike.</summary>
public sealed class CommandIdentityTests
{
    public static MatrixTheoryData<StorageEngine, string> Commands => new(
        [StorageEngine.Sqlite, StorageEngine.Postgres],
        ["register batch", "register sample", "record movement", "record verification", "report determination", "external id", "decide"]);

    [Theory, MemberData(nameof(Commands))]
    public async Task Command_SentThreeTimesAtOnce_IsDoneOnce(StorageEngine engine, string command)
    {
        await using var lab = await Create(engine);
        var send = await Sender(lab, command);

        var answers = await Task.WhenAll(Enumerable.Range(0, 3).Select(_ => AtOnce(send)));
        var later = await send();

        Assert.Equal(
            [AnswerKind.Done, AnswerKind.Repeated, AnswerKind.Repeated, AnswerKind.Repeated], answers.Append(later).Select(a => a.Kind).Order());
        Assert.Single(answers.Append(later).Select(a => a.Value).Distinct());
        Assert.Equal(1, await Stored(lab, command));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task CommandId_OfAnotherKind_IsTold(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var id = Guid.NewGuid();
        await lab.Batch(change: b => b with { CommandId = id });

        var answer = await new RegisterSample(lab.Open, lab.Lab.Clock).Run(
            lab.Analyst, lab.NewSample(null) with { CommandId = id }, TestContext.Current.CancellationToken);

        Assert.Equal(AnswerKind.Conflict, answer.Kind);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task ExternalId_OfAnotherInstrument_IsStored(StorageEngine engine)
    {
        await using var lab = await Create(engine, InDuplicate);
        await lab.Lab.Add(NewInstrument("VP-2"), lab.NewVerification("VP-2"));
        var sample = await lab.Sample(null);
        Done(await lab.Report(lab.Key, lab.NewDetermination(sample, "65.0") with { ExternalId = "run 1" }));

        Done(await lab.Report(lab.Key, lab.NewDetermination(sample, "65.1", 2) with { ExternalId = "run 1", Instrument = "VP-2" }));
    }

    private static async Task<Func<Task<(AnswerKind Kind, string? Value)>>> Sender(GasolineLab lab, string command)
    {
        var (id, cancel) = (Guid.NewGuid(), TestContext.Current.CancellationToken);
        var batch = command is "decide" ? await lab.MeasuredBatch() : null;
        var sample = command is "report determination" or "external id" ? await lab.Sample(null) : null;
        var seen = batch is null ? null : await lab.Assess(batch);
        var newBatch = lab.NewBatch() with { CommandId = id };
        return command switch
        {
            "register batch" => async () => Seen(await new RegisterBatch(lab.Open, lab.Lab.Clock).Run(lab.Chemist, newBatch, cancel)),
            "register sample" => async () => Seen(await new RegisterSample(lab.Open, lab.Lab.Clock).Run(lab.Analyst, lab.NewSample(null) with { CommandId = id }, cancel)),
            "record movement" => async () => Seen(await lab.Move(lab.Engineer, lab.Now, command: id)),
            "record verification" => async () => Seen(await lab.Verify(lab.Analyst, false, command: id)),
            "report determination" => async () => Seen(await lab.Report(lab.Analyst, lab.NewDetermination(sample!, "65.0") with { CommandId = id }), r => r.Id),
            "external id" => async () => Seen(await lab.Report(lab.Key, lab.NewDetermination(sample!, "65.0") with { ExternalId = "run 17" }), r => r.Id),
            _ => async () => Seen(await lab.Sign(lab.Chemist, new DecisionRequest(id, batch!, DecisionKind.Hold, 0, seen!.EvidenceHash, "wait", "password")), d => d.Id),
        };
    }

    private static (AnswerKind Kind, string? Value) Seen<T>(Answer<T> answer, Func<T, object>? value = null) =>
        (answer.Kind, answer.Value is { } v ? (value is null ? v : value(v)).ToString() : answer.Text);

    private static Task<int> Stored(GasolineLab lab, string command) => lab.Read(c => command switch
    {
        "register batch" => c.Batches.CountAsync(TestContext.Current.CancellationToken),
        "register sample" => c.Samples.CountAsync(TestContext.Current.CancellationToken),
        "record movement" => c.TankMovements.CountAsync(TestContext.Current.CancellationToken),
        "record verification" => c.Verifications.CountAsync(v => !v.InBand, TestContext.Current.CancellationToken),
        "decide" => c.Decisions.CountAsync(TestContext.Current.CancellationToken),
        _ => c.Determinations.CountAsync(TestContext.Current.CancellationToken),
    });
}
