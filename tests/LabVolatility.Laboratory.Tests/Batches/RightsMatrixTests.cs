using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.Limits;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Batches;

/// <summary>Every role against every act: allowed, or forbidden in words; nothing in between.</summary>
public sealed class RightsMatrixTests
{
    private const Roles Bench = Roles.Analyst | Roles.ShiftChemist | Roles.QualityManager;
    private const Roles Deciders = Roles.ShiftChemist | Roles.QualityManager;

    // The table of the design, act by act.
    private static readonly Dictionary<string, Roles> Holders = new(StringComparer.Ordinal)
    {
        ["register sample"] = Bench,
        ["receive sample"] = Bench,
        ["record movement"] = Bench | Roles.BlendingEngineer,
        ["report"] = Bench,
        ["save draft"] = Bench,
        ["take on"] = Bench,
        ["amend own"] = Bench,
        ["amend after decision"] = Deciders,
        ["release"] = Deciders,
        ["hold"] = Deciders,
        ["reject"] = Deciders,
        ["withdraw"] = Deciders,
        ["concession"] = Roles.QualityManager,
        ["cancel test"] = Deciders,
        ["enter party result"] = Deciders,
        ["withdraw party result"] = Deciders,
        ["take step"] = Deciders,
        ["register batch"] = Roles.ShiftChemist | Roles.BlendingEngineer,
        ["verify"] = Bench,
        ["stop instrument"] = Bench,
        ["calibrate"] = Bench,
        ["put back"] = Roles.QualityManager,
        ["add instrument"] = Roles.QualityManager,
        ["draft precision"] = Roles.QualityManager,
        ["approve precision"] = Roles.QualityManager,
        ["withdraw precision"] = Roles.QualityManager,
        ["draft limit"] = Roles.QualityManager,
        ["approve limit"] = Roles.QualityManager,
        ["confirm limit"] = Roles.QualityManager,
        ["draft area"] = Roles.QualityManager,
        ["approve area"] = Roles.QualityManager,
    };

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Act_ByEachRole_FollowsTheTable(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var id = Guid.NewGuid();
        foreach (var role in Enum.GetValues<Roles>())
        {
            foreach (var (act, holders) in Holders)
            {
                var actor = await lab.Lab.AddActor($"{role} {act}", role);

                var kind = await Kind(lab, act, actor, id);

                var mayAct = (holders & role) != Roles.None;
                Assert.True((kind is AnswerKind.Forbidden) != mayAct, $"{act} by {role}: {kind}");
            }
        }
    }

    // Asked with nothing that exists: who may act hears what is wrong with it, who may not hears that.
    private static async Task<AnswerKind> Kind(GasolineLab lab, string act, Actor actor, Guid id)
    {
        var (open, clock, cancel) = (lab.Open, lab.Lab.Clock, TestContext.Current.CancellationToken);
        var nobody = lab.NewDetermination("S2600001X", "65.0") with { SampleNumber = "none" };
        Task<Answer<DecisionInForce>> Sign(DecisionKind kind) => lab.Sign(actor, new DecisionRequest(Guid.NewGuid(), "none", kind, 0, "", "why", "password"));
        return act switch
        {
            "register sample" => (await new RegisterSample(open, clock).Run(actor, new SampleRequest(), cancel)).Kind,
            "receive sample" => (await new ReceiveSample(open, clock).Run(actor, new ReceiveSample.Request("none", id, [], ReceiptVerdict.AsExpected, null), cancel)).Kind,
            "record movement" => (await lab.Move(actor, lab.Now, tank: "none")).Kind,
            "report" => (await lab.Report(actor, nobody)).Kind,
            "save draft" => (await new SaveDraft(open, clock).Run(actor, id, new BenchEntry(), cancel)).Kind,
            "take on" => (await new TakeOnDetermination(open, clock).Run(actor, id, cancel)).Kind,
            "amend own" => (await lab.Amend(actor, await MeasuredBy(lab, actor, false), "64.0")).Kind,
            "amend after decision" => (await lab.Amend(actor, await MeasuredBy(lab, actor, true), "64.0")).Kind,
            "release" => (await Sign(DecisionKind.Release)).Kind,
            "hold" => (await Sign(DecisionKind.Hold)).Kind,
            "reject" => (await Sign(DecisionKind.Reject)).Kind,
            "withdraw" => (await Sign(DecisionKind.Withdraw)).Kind,
            "concession" => (await Sign(DecisionKind.Concession)).Kind,
            "cancel test" => (await new CancelTest(open).Run(actor, id, "why", cancel)).Kind,
            "enter party result" => (await lab.EnterParty("none", "61.2", by: actor)).Kind,
            "withdraw party result" => (await new WithdrawPartyResult(open, clock).Run(actor, id, "why", cancel)).Kind,
            "take step" => (await lab.Step(actor, new TakeStepRequest(Guid.NewGuid(), "none", RetestOccasion.NotDecided, "DVPE", 1, "why"))).Kind,
            "register batch" => (await new RegisterBatch(open, clock).Run(actor, new BatchRequest(), cancel)).Kind,
            "verify" => (await lab.Verify(actor, true, "none")).Kind,
            "stop instrument" => (await new KeepInstrument(open).Stop(actor, "none", id, "why", cancel)).Kind,
            "calibrate" => (await new KeepInstrument(open).Calibrated(actor, "none", id, new DateOnly(2026, 1, 1), new DateOnly(2027, 1, 1), null, cancel)).Kind,
            "put back" => (await new KeepInstrument(open).PutBack(actor, "none", id, "why", cancel)).Kind,
            "add instrument" => (await new KeepInstrument(open).Add(actor, NewInstrument(Tester), cancel)).Kind,
            "draft precision" => (await new KeepPrecision(open, clock).Draft(actor, new PrecisionEntry { Method = "", Edition = "", Quantity = "", Source = "" }, cancel)).Kind,
            "approve precision" => (await new KeepPrecision(open, clock).Approve(actor, id, cancel)).Kind,
            "withdraw precision" => (await new KeepPrecision(open, clock).Withdraw(actor, id, "why", cancel)).Kind,
            "draft limit" => (await new KeepLimit(open, clock).Draft(actor, NewLimit("", "none", null), cancel)).Kind,
            "approve limit" => (await new KeepLimit(open, clock).Approve(actor, id, cancel)).Kind,
            "confirm limit" => (await new KeepLimit(open, clock).Confirm(actor, "none", "own copy", cancel)).Kind,
            "draft area" => (await new KeepArea(open, clock).Draft(actor, NewArea(""), cancel)).Kind,
            "approve area" => (await new KeepArea(open, clock).Approve(actor, id, cancel)).Kind,
            _ => throw new InvalidOperationException(act),
        };
    }

    // A determination that the actor measured; roles that can't measure are offered an analyst's.
    private static async Task<Guid> MeasuredBy(GasolineLab lab, Actor actor, bool decided)
    {
        var by = (actor.Roles & Bench) != Roles.None ? actor : lab.Analyst;
        var batch = await lab.Batch();
        var id = await lab.Measure(await lab.Sample(batch), "65.0", by: by);
        if (decided)
            Done(await lab.Sign(lab.Chemist, batch, DecisionKind.Hold));
        return id;
    }
}
