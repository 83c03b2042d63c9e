using Bunit;
using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Web.Batches;
using Xunit;

namespace LabVolatility.Web.Tests.Batches;

/// <summary>Nobody is offered what they may not sign, and is told why before typing a password.</summary>
public sealed class DecisionBarTests : BunitContext
{
    [Fact]
    public void Conforming_ShiftChemist_MayReleaseHoldReject() =>
        Assert.Equal(["decide-release", "decide-hold", "decide-reject"], Offered(Sheets.Of(), Sheets.Chemist));

    [Fact]
    public void Conforming_Analyst_IsOfferedNothing() => Assert.Empty(Offered(Sheets.Of(), Sheets.Analyst));

    [Fact]
    public void OwnMeasurement_ShiftChemist_IsToldThatAnotherSigns()
    {
        var sheet = Sheets.Of();
        var measured = sheet.Evidence with { Samples = [SampleMeasuredBy(Sheets.Chemist)] };
        var bar = Draw(sheet with { Assessed = sheet.Assessed with { Evidence = measured, EvidenceHash = EvidenceText.Hash(EvidenceText.Of(measured)) } }, Sheets.Chemist);

        Assert.Contains("Somebody else signs its release", bar.Find("#against").TextContent, StringComparison.Ordinal);
        Assert.Equal(["decide-hold", "decide-reject"], bar.FindAll("button").Select(b => b.Id));
    }

    [Fact]
    public void ContractLimitMissed_QualityManager_MayGrantConcession() =>
        Assert.Equal(["decide-concession", "decide-hold", "decide-reject"], Offered(Sheets.Of(Outcome.DoesNotConform), Sheets.Manager));

    [Fact]
    public void LegalLimitMissed_QualityManager_IsToldWhyNoConcession()
    {
        var bar = Draw(Sheets.Of(Outcome.DoesNotConform, failsLegal: true), Sheets.Manager);

        Assert.Contains("no concession can be made against it", bar.Find("#against").TextContent, StringComparison.Ordinal);
        Assert.Equal(["decide-hold", "decide-reject"], bar.FindAll("button").Select(b => b.Id));
    }

    [Fact]
    public void SomethingWaits_ShiftChemist_SeesWhatStandsAgainstIt()
    {
        var bar = Draw(Sheets.Of(blocks: ["Sample S2600417B waits for EN 13016-1: not measured yet."]), Sheets.Chemist);

        Assert.Contains("waits for EN 13016-1", bar.Find("#against").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("decide-release", bar.FindAll("button").Select(b => b.Id));
    }

    [Theory]
    [InlineData(DecisionKind.Release, false, "decide-withdraw")]
    [InlineData(DecisionKind.Release, true, "decide-release decide-withdraw")]
    [InlineData(DecisionKind.Hold, false, "decide-release decide-reject decide-withdraw")]
    [InlineData(DecisionKind.Reject, false, "decide-withdraw")]
    [InlineData(DecisionKind.Withdraw, false, "decide-release decide-hold decide-reject")]
    public void DecisionInForce_ShiftChemist_IsOfferedWhatMayFollow(DecisionKind inForce, bool forReview, string offered) =>
        Assert.Equal(offered, string.Join(' ', Offered(Sheets.Of(inForce: inForce, forReview: forReview, certificates: [Certificate(false)]), Sheets.Chemist)));

    [Fact]
    public void ReleasedWithoutCertificate_ShiftChemist_MayIssueIt() =>
        Assert.Contains("issue", Offered(Sheets.Of(inForce: DecisionKind.Release, certificates: [Certificate(superseded: true)]), Sheets.Chemist));

    private static LabVolatility.Laboratory.Certificates.ReadCertificates.Line Certificate(bool superseded) =>
        new("C2600001", 1, "7H2K-9QXB-41TN", DateTimeOffset.UnixEpoch, superseded);

    private static SampleEvidence SampleMeasuredBy(Actor actor) => new()
    {
        Number = "S2600417B",
        Level = LabVolatility.Laboratory.Samples.SampleLevel.Running,
        State = LabVolatility.Laboratory.Samples.SampleState.Received,
        SampledAt = DateTimeOffset.UnixEpoch,
        SampledBy = "Ola Vik",
        Verdict = LabVolatility.Laboratory.Samples.ReceiptVerdict.AsExpected,
        Containers = [],
        Usable = true,
        Determinations =
        [
            new DeterminationEvidence
            {
                Id = Guid.Empty, Container = 1, Method = "EN 13016-1", Edition = "2024", Instrument = "VP-1", InstrumentState = "ready", MeasuredAt = DateTimeOffset.UnixEpoch,
                MeasurerId = actor.Id, Measurer = actor.Name, Hands = [actor.Id], Revision = 1, AmendedBecause = null, DoesNotCount = null,
                Readings = new(), Handling = new(), Findings = [], Results = [],
            },
        ],
    };

    private IReadOnlyList<string?> Offered(BatchSheet sheet, Actor actor) => [.. Draw(sheet, actor).FindAll("button").Select(b => b.Id)];

    private IRenderedComponent<DecisionBar> Draw(BatchSheet sheet, Actor actor) =>
        Render<DecisionBar>(p => p.Add(b => b.Sheet, sheet).Add(b => b.Actor, actor));
}
