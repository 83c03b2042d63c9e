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
            new TakenOn { DeterminationId = scene.Determination.Id, PersonId = scene.Analyst.Id, At = now },
            new PerformedCommand { Id = Guid.CreateVersion7(), Name = "report determination", Subject = "S1", At = now });
        await laboratory.Add([.. scene.NewCargo(scene.Chemist), scene.NewCargoTank(decision)]);
        return scene;
    }
}
