using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Batches;

/// <summary>
/// Another party's result beside ours. DVPE = 0.965 · 65.0 − 3.78 = 58.945 kPa; r = 1.5 and R = 3.0 kPa, so that two
/// single results may differ by 3.0 kPa (ISO 4259-2, the row 4259-2LAB-1-1 of the worked examples).
/// </summary>
public sealed class PartyResultTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Entered_WithinR_AgreesAndLeavesOurMeanAlone(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Precision();
        var batch = await lab.MeasuredBatch();

        Done(await lab.EnterParty(batch, "61.945 kPa"));

        var held = await Only(lab, batch);
        Assert.Equal((true, 58.945m, 3.000m), (held.Comparison!.Agree, held.Comparison.Ours, held.Comparison.Difference));
        Assert.Equal(FactStatus.FromMemory, held.Comparison.Status);
        Assert.Equal(2, held.Comparison.Arithmetic.Count);
        var limit = await lab.OnlyLimit(batch, "EN228-A/DVPE");
        Assert.Equal((1, 58.945m), (limit.Count, limit.Value));
        Assert.Null((await lab.Sheet(batch)).Next);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Entered_BeyondR_DiffersAndNamesTheNextStep(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Precision();
        var batch = await lab.MeasuredBatch();

        Done(await lab.EnterParty(batch, "61.95"));

        var held = await Only(lab, batch);
        Assert.False(held.Comparison!.Agree);
        Assert.Contains("retained samples", held.Comparison.Next, StringComparison.Ordinal);
        var next = await lab.Next(batch);
        Assert.Equal((RetestOccasion.PartyDiffers, RetestKind.MoreContainers), (next.Occasion, next.Kind));
    }

    // R of psi results is converted exactly: 8.55 psi = 58.950 kPa.
    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Entered_InAnotherUnit_IsHeldInTheLimitsUnit(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Precision();
        var batch = await lab.MeasuredBatch();

        Done(await lab.EnterParty(batch, "8,55 psi"));

        var held = await Only(lab, batch);
        Assert.Equal(("8,55 psi", "psi", "kPa", true), (held.Typed, held.Unit, held.Comparison!.Unit, held.Comparison.Agree));
        Assert.Equal(58.950, (double)held.Comparison.Theirs!.Value, 0.001);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Entered_ByAnotherMethodOrEquation_IsNotCompared(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Precision();
        var batch = await lab.MeasuredBatch();

        Done(await lab.EnterParty(batch, "59.0", r => r with { Method = Astm }));
        Done(await lab.EnterParty(batch, "59.0", r => r with { Quantity = "RVP", Method = Astm, Correlation = "EPA" }));

        Assert.All((await lab.Assess(batch)).Evidence.Parties, p =>
        {
            Assert.Null(p.Comparison!.Agree);
            Assert.Null(p.Comparison.Ours);
            Assert.Contains("unlike things are not compared", p.Comparison.Why, StringComparison.Ordinal);
        });
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Entered_PrecisionNotSetOrHazy_CannotBeJudged(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch();
        Done(await lab.EnterParty(batch, "59.0"));
        var unset = await Only(lab, batch);
        await lab.Precision();

        Done(await lab.EnterParty(batch, "59.1", r => r with { Hazy = true }));

        Assert.Null(unset.Comparison!.Agree);
        Assert.Contains("R is not set", unset.Comparison.Why, StringComparison.Ordinal);
        var parties = (await lab.Assess(batch)).Evidence.Parties;
        Assert.True(Assert.Single(parties, p => !p.Hazy).Comparison!.Agree);
        var hazy = Assert.Single(parties, p => p.Hazy).Comparison!;
        Assert.Null(hazy.Agree);
        Assert.Contains("hazy", hazy.Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("A-17, a-18", "A-17", "A-18", SealMatch.Matches)]
    [InlineData("A-17; B-2", "A-17", "A-18", SealMatch.NotOurs)]
    [InlineData(" , ", "A-17", null, SealMatch.NotStated)]
    [InlineData("A-17", null, " ", SealMatch.OursNotRecorded)]
    public void Seals_HeldAgainstOurs_MatchOrDont(string? stated, string? first, string? second, SealMatch expected) =>
        Assert.Equal(expected, SealComparison.Of(stated, [first, second]));

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Withdrawn_StaysReadableAndIsNotCompared(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Precision();
        var batch = await lab.MeasuredBatch();
        var id = Done(await lab.EnterParty(batch, "66.0"));
        var withdraw = new WithdrawPartyResult(lab.Open, lab.Lab.Clock);

        Assert.Equal(AnswerKind.Invalid, (await withdraw.Run(lab.Chemist, id, " ", Cancel)).Kind);
        Done(await withdraw.Run(lab.Chemist, id, "their sample was of another tank", Cancel));

        var held = await Only(lab, batch);
        Assert.Null(held.Comparison);
        Assert.Equal("withdrawn by Tomas Lind: their sample was of another tank", held.Withdrawn);
        Assert.Null((await lab.Sheet(batch)).Next);
        Assert.Equal(AnswerKind.Conflict, (await withdraw.Run(lab.Manager, id, "again", Cancel)).Kind);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Entered_AfterRelease_MarksItForReview(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Precision();
        var batch = await lab.ReleasedBatch();

        Done(await lab.EnterParty(batch, "63.0"));

        var sheet = await lab.Sheet(batch);
        Assert.True(sheet.Assessed.InForce!.ForReview);
        Assert.Contains("Fjord Inspection", Assert.Single(sheet.Assessed.ReviewMarks).Cause, StringComparison.Ordinal);
        Assert.Contains(sheet.Story, e => e.What == "result of Fjord Inspection entered");
    }

    // AL = 60.0 + 0.255 · 3.0 · 1.645 = 61.258 (the row D3244-60.0-0.95); ATV = (58.945 + 61.001) / 2.
    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Agreed_D3244_HoldsTheAssignedValueAgainstTheAcceptanceLimit(StorageEngine engine)
    {
        await using var lab = await Create(engine, g => g.Parties = new PartyAgreement(PartyRule.AstmD3244, 0.95m, Comparison.Absolute));
        await lab.Precision();
        var batch = await lab.MeasuredBatch();

        Done(await lab.EnterParty(batch, "61.001", r => r with { Count = 4 }));

        var assigned = Assert.Single((await Only(lab, batch)).Comparison!.Assigned);
        Assert.Equal((59.973m, true, "EN228-A/DVPE"), (assigned.Value, assigned.Accepted, assigned.Limit));
        Assert.Contains("61.259", assigned.Why, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task ThirdLaboratory_Reports_TheOutlierIsDropped(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Precision();
        var batch = await lab.MeasuredBatch();
        Done(await lab.EnterParty(batch, "62.5"));

        Done(await lab.EnterParty(batch, "59.055", r => r with { Kind = PartyKind.ThirdLaboratory, Party = "Nordlab", Laboratory = "Nordlab" }));

        var dispute = (await lab.Assess(batch)).Evidence.Dispute!;
        Assert.Equal(("Fjord laboratory", 59.000m), (dispute.Dropped, dispute.Mean));
        Assert.Null((await lab.Sheet(batch)).Next);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Entered_WithMistakes_SaysAllOfThem(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.Batch();

        var answer = await lab.EnterParty(batch, "much", r => r with { Party = " ", Count = 0, Sample = "S1", MeasuredOn = new DateOnly(2027, 1, 1) });

        Assert.Equal(["/count", "/measuredOn", "/party", "/sample", "/value"], answer.Problems.Select(p => p.Field).Order());
    }

    private static async Task<PartyEvidence> Only(GasolineLab lab, string batch) => Assert.Single((await lab.Assess(batch)).Evidence.Parties);
}
