using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Batches;

/// <summary>Signing: who may, on what, in which order.</summary>
public sealed class DecideTests
{
    private static readonly DateTimeOffset At = new(2026, 5, 4, 8, 0, 0, TimeSpan.Zero);

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Release_Conforms_IsSignedWithMeaning(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch();

        var answer = await lab.Sign(lab.Chemist, batch);

        var decision = Done(answer);
        Assert.Equal((DecisionKind.Release, 1, lab.Chemist.Name, At), (decision.Kind, decision.Sequence, decision.PersonName, decision.At));
        Assert.Contains(batch, decision.Meaning, StringComparison.Ordinal);
        Assert.False((await lab.Assess(batch)).InForce!.ForReview);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Release_DoesNotConform_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch("67.0");

        var answer = await lab.Sign(lab.Chemist, batch);

        Assert.Equal(AnswerKind.Refused, answer.Kind);
        Assert.Equal([EvidenceRules.ReleaseConforms], Rules(answer));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Release_ByMeasurer_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.Batch();
        await lab.Measure(await lab.Sample(batch), "65.0", by: lab.Chemist);

        var own = await lab.Sign(lab.Chemist, batch);
        var hold = await lab.Sign(lab.Chemist, batch, DecisionKind.Hold);

        Assert.Equal((AnswerKind.Refused, SecondPersonSigns.Rule), (own.Kind, Assert.Single(Rules(own))));
        Assert.Equal(AnswerKind.Done, hold.Kind);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Release_ByWhoAmended_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.Batch();
        var id = await lab.Measure(await lab.Sample(batch), "65.0");
        Done(await lab.Amend(lab.Chemist, id, "64.9"));

        var own = await lab.Sign(lab.Chemist, batch);
        var other = await lab.Sign(lab.Manager, batch);

        Assert.Equal((AnswerKind.Refused, SecondPersonSigns.Rule), (own.Kind, Assert.Single(Rules(own))));
        Assert.Equal(AnswerKind.Done, other.Kind);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Release_ByWhoSetAside_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.Batch();
        var sample = await lab.Sample(batch);
        var id = await lab.Measure(sample, "70.0");
        Done(await lab.Amend(lab.Chemist, id, null, setAside: true, cause: "syringe leaked"));
        await lab.Measure(sample, "65.0", 2);

        var own = await lab.Sign(lab.Chemist, batch);

        Assert.Equal((AnswerKind.Refused, SecondPersonSigns.Rule), (own.Kind, Assert.Single(Rules(own))));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Decide_ByKey_IsForbidden(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch();
        var key = lab.Manager with { IsKey = true, Origin = "interface" };

        foreach (var kind in Enum.GetValues<DecisionKind>())
            Assert.Equal(AnswerKind.Forbidden, (await lab.Sign(key, batch, kind)).Kind);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Decide_WrongPassword_SignsNothing(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch();
        var seen = await lab.Assess(batch);
        var request = new DecisionRequest(Guid.NewGuid(), batch, DecisionKind.Release, 0, seen.EvidenceHash, null, "wrong");

        var answer = await new Decide(lab.Open, lab.Lab.Clock, new No()).Run(lab.Chemist, request, TestContext.Current.CancellationToken);

        Assert.Equal((AnswerKind.Refused, ISignature.Rule), (answer.Kind, Assert.Single(Rules(answer))));
        Assert.Null((await lab.Assess(batch)).InForce);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Decide_EvidenceChangedSinceTheLook_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.Batch();
        var id = await lab.Measure(await lab.Sample(batch), "65.0");
        var seen = await lab.Assess(batch);
        Done(await lab.Amend(lab.Analyst, id, "65.1"));

        foreach (var kind in (DecisionKind[])[DecisionKind.Release, DecisionKind.Hold, DecisionKind.Reject])
        {
            var answer = await lab.Sign(lab.Chemist, new DecisionRequest(Guid.NewGuid(), batch, kind, 0, seen.EvidenceHash, "why", "password"));

            Assert.Equal((AnswerKind.Refused, EvidenceRules.FrozenEvidence), (answer.Kind, Assert.Single(Rules(answer))));
        }
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Decide_SecondOne_IsToldWhoDecidedWhat(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch();
        var seen = await lab.Assess(batch);
        var (first, second) = (Request(batch, DecisionKind.Hold, seen), Request(batch, DecisionKind.Release, seen));
        Done(await lab.Sign(lab.Chemist, first));

        var beaten = await lab.Sign(lab.Manager, second);

        Assert.Equal(AnswerKind.Conflict, beaten.Kind);
        Assert.Equal((DecisionKind.Hold, lab.Chemist.Id), (beaten.Value!.Kind, beaten.Value.PersonId));
        Assert.Contains($"{lab.Chemist.Name} was first", beaten.Text, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Decide_OrderOfDecisions_NamesBothStates(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch();

        var nothing = await lab.Sign(lab.Chemist, batch, DecisionKind.Withdraw);
        Done(await lab.Sign(lab.Chemist, batch));
        var hold = await lab.Sign(lab.Chemist, batch, DecisionKind.Hold);
        var again = await lab.Sign(lab.Chemist, batch);
        Done(await lab.Sign(lab.Chemist, batch, DecisionKind.Withdraw));
        Done(await lab.Sign(lab.Manager, batch, DecisionKind.Reject));
        var release = await lab.Sign(lab.Chemist, batch);

        foreach (var refused in (Answer<DecisionInForce>[])[nothing, hold, again, release])
            Assert.Equal((AnswerKind.Refused, OrderOfDecisions.Rule), (refused.Kind, Assert.Single(Rules(refused))));
        Assert.Contains("released by Tomas Lind", hold.Text, StringComparison.Ordinal);
        Assert.Contains("rejected by Kari Moe", release.Text, StringComparison.Ordinal);
        Assert.Equal([1, 2, 3], (await lab.Assess(batch)).Decisions.Select(d => d.Sequence));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Decide_SameCommandTwice_SignsOnce(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch();
        var request = Request(batch, DecisionKind.Hold, await lab.Assess(batch));
        var first = Done(await lab.Sign(lab.Chemist, request));
        Done(await lab.Sign(lab.Manager, batch, DecisionKind.Reject));

        var again = await lab.Sign(lab.Chemist, request);

        Assert.Equal((AnswerKind.Repeated, first.Id), (again.Kind, again.Value!.Id));
        Assert.Equal(2, (await lab.Assess(batch)).Decisions.Count);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Decide_ReasonMissing_IsInvalid(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch();

        foreach (var kind in Enum.GetValues<DecisionKind>().Where(k => k is not DecisionKind.Release))
        {
            var answer = await lab.Sign(lab.Manager, batch, kind, " ");

            Assert.Equal((AnswerKind.Invalid, "/reason"), (answer.Kind, Assert.Single(answer.Problems).Field));
        }
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Decide_RaceOfReleaseAndAmendment_NeverLeavesAnUnmarkedRelease(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        for (var round = 0; round < 20; round++)
        {
            var batch = await lab.Batch();
            var id = await lab.Measure(await lab.Sample(batch), "65.0");
            var request = Request(batch, DecisionKind.Release, await lab.Assess(batch));

            var signing = AtOnce(() => lab.Sign(lab.Chemist, request));
            var amending = AtOnce(() => lab.Amend(lab.Manager, id, "66.0"));
            var signed = await signing;
            Done(await amending);

            var after = await lab.Assess(batch);
            Assert.True(signed.Kind is AnswerKind.Done ? after.InForce!.ForReview : after.InForce is null, $"{signed.Kind}: {signed.Text}");
        }
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Decide_DatabaseRefuses_IsAnAnswer(StorageEngine engine)
    {
        foreach (var rule in (string[])[GuardRules.SecondPersonSigns, GuardRules.EvidenceIsFrozen, GuardRules.NoConcessionAgainstALegalLimit])
        {
            await using var lab = await Create(engine);
            var batch = await lab.MeasuredBatch();
            await RefusingTrigger.Add(lab.Lab, "decisions", rule);

            var answer = await lab.Sign(lab.Chemist, batch);

            Assert.Equal((AnswerKind.Refused, rule), (answer.Kind, Assert.Single(Rules(answer))));
            Assert.Null((await lab.Assess(batch)).InForce);
        }
    }

    private static DecisionRequest Request(string batch, DecisionKind kind, AssessBatch.Assessed seen) => new(
        Guid.NewGuid(), batch, kind, seen.InForce?.Sequence ?? 0, seen.EvidenceHash, kind is DecisionKind.Release ? null : "why", "password");

    private sealed class No : ISignature
    {
        public Task<bool> IsRightAsync(Actor actor, string password, CancellationToken cancel) => Task.FromResult(false);
    }
}
