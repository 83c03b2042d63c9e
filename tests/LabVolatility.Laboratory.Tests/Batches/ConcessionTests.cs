using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Batches;

/// <summary>A concession is made against contract and internal limits, by the quality manager, on results.</summary>
public sealed class ConcessionTests
{
    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Concession_ContractLimit_IsForTheQualityManager(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.OwnLimit("contract 7", "EN228-A", maximum: 58.0m);
        var batch = await lab.MeasuredBatch();

        var release = await lab.Sign(lab.Chemist, batch);
        var chemist = await lab.Sign(lab.Chemist, batch, DecisionKind.Concession);
        var manager = await lab.Sign(lab.Manager, batch, DecisionKind.Concession, "customer accepts 59.0");

        Assert.Equal((AnswerKind.Refused, AnswerKind.Forbidden, AnswerKind.Done), (release.Kind, chemist.Kind, manager.Kind));
        Assert.Equal("customer accepts 59.0", manager.Value!.Reason);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Concession_LegalLimit_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch("67.0");

        var answer = await lab.Sign(lab.Manager, batch, DecisionKind.Concession);

        Assert.Equal((AnswerKind.Refused, EvidenceRules.ConcessionNotLegal), (answer.Kind, Assert.Single(Rules(answer))));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Concession_LegalAndContractLimitFail_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.OwnLimit("contract 7", "EN228-A", maximum: 58.0m);
        var batch = await lab.MeasuredBatch("67.0");

        var answer = await lab.Sign(lab.Manager, batch, DecisionKind.Concession);

        Assert.Equal((AnswerKind.Refused, EvidenceRules.ConcessionNotLegal), (answer.Kind, Assert.Single(Rules(answer))));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Concession_Conforms_IsNotNeeded(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch();

        var answer = await lab.Sign(lab.Manager, batch, DecisionKind.Concession);

        Assert.Equal((AnswerKind.Refused, EvidenceRules.ReleaseConforms), (answer.Kind, Assert.Single(Rules(answer))));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Concession_ByMeasurer_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.OwnLimit("contract 7", "EN228-A", maximum: 58.0m);
        var batch = await lab.Batch();
        await lab.Measure(await lab.Sample(batch), "65.0", by: lab.Manager);

        var own = await lab.Sign(lab.Manager, batch, DecisionKind.Concession);
        var other = await lab.Sign(lab.SecondManager, batch, DecisionKind.Concession);

        Assert.Equal((AnswerKind.Refused, AnswerKind.Done), (own.Kind, other.Kind));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Concession_InstrumentMissing_WaitsForResults(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.OwnLimit("contract 7", "EN228-A", maximum: 58.0m);
        var batch = await lab.Batch();
        await lab.Sample(batch);

        var answer = await lab.Sign(lab.Manager, batch, DecisionKind.Concession);

        Assert.Equal(AnswerKind.Refused, answer.Kind);
        Assert.Contains(EvidenceRules.NothingWaits, Rules(answer));
    }
}
