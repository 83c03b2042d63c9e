using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Certificates;
using LabVolatility.Laboratory.People;

namespace LabVolatility.Web.Tests.Batches;

/// <summary>Batches as a page gets them, without a database.</summary>
internal static class Sheets
{
    public static Actor Analyst { get; } = new(new Guid("00000000-0000-7000-8000-000000000001"), "Ida Berg", Roles.Analyst, "page");

    public static Actor Chemist { get; } = new(new Guid("00000000-0000-7000-8000-000000000003"), "Tomas Lind", Roles.ShiftChemist, "page");

    public static Actor Manager { get; } = new(new Guid("00000000-0000-7000-8000-000000000005"), "Kari Moe", Roles.QualityManager, "page");

    public static BatchSheet Of(
        Outcome outcome = Outcome.Conforms, DecisionKind? inForce = null, bool forReview = false, bool failsLegal = false,
        IReadOnlyList<string>? blocks = null, IReadOnlyList<ReadCertificates.Line>? certificates = null)
    {
        var evidence = new Evidence
        {
            Batch = "26-1042",
            Grade = "G95",
            GradeName = "Gasoline 95",
            State = ProductState.Finished,
            From = new DateOnly(2026, 5, 10),
            Until = new DateOnly(2026, 5, 20),
            Destinations = [new Destination("EN228-A", PointOfCompliance.Terminal)],
            Rule = DecisionRule.Simple,
            Confidence = 0.95m,
            Samples = [],
            Levels = [],
            Limits = [],
            Remarks = [],
            Blocks = blocks ?? [],
            Outcome = outcome,
            FailsLegalLimit = failsLegal,
        };
        var batch = new Batch { Number = evidence.Batch, GradeCode = evidence.Grade, Destinations = evidence.Destinations, From = evidence.From, Until = evidence.Until };
        var decision = inForce is { } kind
            ? new DecisionInForce(Guid.NewGuid(), 1, kind, Manager.Id, Manager.Name, "meaning", null, new DateTimeOffset(2026, 5, 4, 8, 0, 0, TimeSpan.Zero), forReview)
            : null;
        return new BatchSheet(
            batch, new AssessBatch.Assessed(evidence, EvidenceText.Hash(EvidenceText.Of(evidence)), decision, [], []), certificates ?? [], []);
    }
}
