using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Certificates;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Tests.Storage;

/// <summary>A scene with at least one row in every table of reported facts.</summary>
internal static class FullScene
{
    public static async Task<Scene> Create(TestLaboratory laboratory)
    {
        var scene = await Scene.Create(laboratory);
        var now = laboratory.Clock.GetUtcNow();
        var party = Guid.CreateVersion7();
        var decision = scene.NewDecision(DecisionKind.Release, scene.Chemist, scene.Assessment);
        await laboratory.Add(new Tank { Code = "T-1", Name = "Tank 1", GradeCode = Scene.GradeCode, CapacityCubicMetres = 12000 });
        var note = Guid.CreateVersion7();
        await laboratory.Add(
            decision,
            new HandoverNote { Id = note, BatchId = scene.Batch.Id, Text = "The second bottle is in the bath.", By = scene.Chemist.Id, ByName = scene.Chemist.FullName, At = now },
            new HandoverTaken { NoteId = note, By = scene.Analyst.Id, ByName = scene.Analyst.FullName, At = now },
            new ReviewMark { Id = Guid.CreateVersion7(), DecisionId = decision.Id, At = now, Cause = "A reading was amended." },
            new Certificate
            {
                Id = Guid.CreateVersion7(),
                Number = "C-1",
                Revision = 1,
                BatchId = scene.Batch.Id,
                DecisionId = decision.Id,
                CheckCode = "CHECK1",
                IssuedAt = now,
                IssuedBy = scene.Chemist.Id,
                Pdf = [1, 2, 3],
                Sha256 = Chain.Sha256("x"),
                Content = "{}",
            },
            new Verification { Id = Guid.CreateVersion7(), InstrumentCode = Scene.Tester, On = new DateOnly(2026, 5, 4), At = now, By = scene.Analyst.Id, Fluid = "cyclopentane", ReadingKpa = 68.3m, InBand = true },
            new TankMovement { Id = Guid.CreateVersion7(), TankCode = "T-1", Kind = MovementKind.Receipt, At = now, RecordedBy = scene.Analyst.Id, RecordedAt = now },
            new ContainerOpening { Id = Guid.CreateVersion7(), ContainerId = scene.Sample.Containers[0].Id, At = now, By = scene.Analyst.Id, Why = "measured" },
            new HandBlend
            {
                SampleId = scene.Sample.Id,
                BlendstockId = scene.Sample.Id,
                BlendstockContainerId = scene.Sample.Containers[0].Id,
                EthanolLot = "E-7",
                BlendstockVolume = new TypedReading("900 mL", 900m, "mL"),
                EthanolVolume = new TypedReading("100 mL", 100m, "mL"),
                Temperature = new TypedReading("0,5", 0.5m, "degC"),
                MadeAt = now,
                MadeBy = scene.Analyst.Id,
            },
            new BlendContent { Id = Guid.CreateVersion7(), SampleId = scene.Sample.Id, EthanolPercent = 9.8m, Method = "infrared", At = now, By = scene.Analyst.Id },
            new TakenOn { DeterminationId = scene.Determination.Id, PersonId = scene.Analyst.Id, At = now },
            new PartyResult
            {
                Id = party,
                BatchId = scene.Batch.Id,
                Party = "Fjord Inspection",
                Laboratory = "Fjord laboratory",
                Quantity = "DVPE",
                Correlation = "EN 13016-1",
                Method = "EN 13016-1",
                Typed = "61.2 kPa",
                Value = 61.2m,
                Unit = "kPa",
                Count = 1,
                MeasuredOn = new DateOnly(2026, 5, 4),
                EnteredBy = scene.Chemist.Id,
                EnteredByName = "Tomas Lind",
                EnteredAt = now,
            },
            new PartyWithdrawal { PartyResultId = party, By = scene.Chemist.Id, ByName = "Tomas Lind", At = now, Reason = "of another batch" },
            new StepTaken
            {
                Id = Guid.CreateVersion7(),
                BatchId = scene.Batch.Id,
                Subject = "S1",
                Place = 1,
                Found = "it differs",
                Reason = "as agreed",
                By = scene.Chemist.Id,
                ByName = "Tomas Lind",
                At = now,
            },
            new PerformedCommand { Id = Guid.CreateVersion7(), Name = "report determination", Subject = "S1", At = now });
        await laboratory.Add([.. scene.NewCargo(scene.Chemist), scene.NewCargoTank(decision)]);
        return scene;
    }
}
