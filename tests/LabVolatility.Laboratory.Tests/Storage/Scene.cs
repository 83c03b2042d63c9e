using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Certificates;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Tests.Storage;

/// <summary>One batch with one measured sample, added row by row: enough for the database's own rules.</summary>
internal sealed class Scene
{
    public const string Tester = "VP-1";
    public const string GradeCode = "gasoline-95";

    private readonly Guid _cargo = Guid.CreateVersion7();
    private int _number;

    private Scene(TestLaboratory laboratory, Person analyst, Person chemist) => (Laboratory, Analyst, Chemist) = (laboratory, analyst, chemist);

    public TestLaboratory Laboratory { get; }

    public Person Analyst { get; }

    public Person Chemist { get; }

    public Batch Batch { get; private set; } = null!;

    public Sample Sample { get; private set; } = null!;

    public Determination Determination { get; private set; } = null!;

    public FrozenAssessment Assessment { get; private set; } = null!;

    private DateTimeOffset Now => Laboratory.Clock.GetUtcNow();

    public static async Task<Scene> Create(TestLaboratory laboratory)
    {
        var scene = new Scene(
            laboratory,
            await laboratory.AddPerson("Ida Berg", Roles.Analyst),
            await laboratory.AddPerson("Tomas Lind", Roles.ShiftChemist));
        await laboratory.Add(
            new Grade { Code = GradeCode, Name = "Gasoline 95", Tests = [new GradeTest("ASTM D5191", [Authority.Astm], false, 4)] },
            new Instrument { Code = Tester, Name = "Tester 1", Methods = ["ASTM D5191"], LowKpa = 7.00m, HighKpa = 130.5m });
        scene.Batch = scene.NewBatch();
        scene.Sample = scene.NewSample(scene.Batch.Id);
        scene.Determination = scene.NewDetermination(scene.Sample);
        scene.Assessment = scene.NewAssessment(scene.Batch.Id);
        await laboratory.Add(scene.Batch, scene.Sample, scene.Determination, scene.Assessment);
        return scene;
    }

    public Batch NewBatch() => new()
    {
        Id = Guid.CreateVersion7(),
        Number = $"B-{++_number}",
        GradeCode = GradeCode,
        CubicMetres = 4250.50m,
        Destinations = [new Destination("US-9.0", PointOfCompliance.Terminal)],
        From = new DateOnly(2026, 5, 4),
        Until = new DateOnly(2026, 5, 20),
        CreatedAt = Now,
        CreatedBy = Chemist.Id,
        Note = "Zażółć \"gęślą\" jaźń \\ µ",
    };

    public Sample NewSample(Guid? batchId)
    {
        var number = $"S{++_number:00000}";
        return new Sample
        {
            Id = Guid.CreateVersion7(),
            Number = number,
            GradeCode = GradeCode,
            BatchId = batchId,
            SampledAt = Now.AddTicks(1_234_567_891),
            SampledBy = "Ida Berg",
            RegisteredAt = Now,
            RegisteredBy = Analyst.Id,
            Containers = [new Container { Id = Guid.CreateVersion7(), Number = 1, Code = number + "C01", VolumeMillilitres = 1000m, FillPercent = 75.0m, SealIntact = true }],
            Tests = [new AssignedTest { Id = Guid.CreateVersion7(), Method = "ASTM D5191", Authorities = [Authority.Astm, Authority.Epa] }],
        };
    }

    public Determination NewDetermination(Sample sample, string? externalId = null) => new()
    {
        Id = Guid.CreateVersion7(),
        SampleId = sample.Id,
        ContainerId = sample.Containers[0].Id,
        Method = "ASTM D5191",
        Edition = "22",
        InstrumentCode = Tester,
        MeasuredAt = Now,
        MeasuredBy = Analyst.Id,
        RecordedBy = Analyst.Id,
        RecordedAt = Now,
        Origin = "page",
        ExternalId = externalId,
        SoleTest = true,
        Revisions = [NewRevision(1, Analyst)],
        Results = [NewResult()],
    };

    public DeterminationRevision NewRevision(int revision, Person by, string? reason = null) => new()
    {
        Id = Guid.CreateVersion7(),
        Revision = revision,
        At = Now,
        By = by.Id,
        ByName = by.FullName,
        Reason = reason,
        Readings = new ReadingsAsTyped { TotalPressure = new TypedReading("70,00", 70.00m, "kPa") },
        Handling = new HandlingAsTyped { AirSaturated = true, Confirmed = [new ConfirmedStep("chilled", Now.AddTicks(17))] },
        Findings = [new Finding("fill-level", FindingSeverity.Warning, "Over 80 %: pour off.")],
    };

    public FrozenAssessment NewAssessment(Guid batchId, bool failsLegalLimit = false) => new()
    {
        Id = Guid.CreateVersion7(),
        BatchId = batchId,
        At = Now,
        By = Chemist.Id,
        FailsLegalLimit = failsLegalLimit,
        Evidence = "{\"limits\":[]}",
        EvidenceHash = Chain.Sha256("{\"limits\":[]}"),
        Build = "test",
    };

    public Decision NewDecision(DecisionKind kind, Person person, FrozenAssessment? assessment, int sequence = 1) => new()
    {
        Id = Guid.CreateVersion7(),
        BatchId = Batch.Id,
        Sequence = sequence,
        Kind = kind,
        AssessmentId = assessment?.Id,
        EvidenceHash = assessment?.EvidenceHash,
        PersonId = person.Id,
        PersonName = person.FullName,
        PersonRoles = "shift chemist",
        Meaning = "I decide on this batch.",
        Reason = kind is DecisionKind.Release ? null : "asked for",
        At = Now,
    };

    /// <summary>A cargo certificate without its tanks.</summary>
    public object[] NewCargo(Person signer) =>
    [
        new Certificate
        {
            Id = _cargo,
            Number = "C-2",
            Revision = 1,
            CheckCode = "CHECK2",
            IssuedAt = Now,
            IssuedBy = signer.Id,
            Pdf = [1, 2, 3],
            Sha256 = Chain.Sha256("y"),
            Content = "{}",
        },
        new Cargo { CertificateId = _cargo, Ship = "Havørn", Voyage = "12", Port = "Fjordvik", Product = "Gasoline 95" },
    ];

    public CargoTank NewCargoTank(Decision decision) =>
        new() { Id = Guid.CreateVersion7(), CertificateId = _cargo, Place = 1, TankCode = "T-1", BatchId = decision.BatchId, DecisionId = decision.Id };

    private static Result NewResult() => new()
    {
        Id = Guid.CreateVersion7(),
        Revision = 1,
        Quantity = "DVPE",
        Correlation = "ASTM D5191",
        CorrelationVersion = "22",
        Value = 63.7700m,
        Exact = "63.77",
        Reported = "63.8",
        Unit = "kPa",
        Equation = "DVPE = 0.965 · Ptot − 3.78 kPa",
        Source = "ASTM D5191",
    };
}
