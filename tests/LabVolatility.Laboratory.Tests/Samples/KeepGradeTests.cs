using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Samples;

public sealed class KeepGradeTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public static TheoryData<StorageEngine> All => Engines.All;

    [Theory, MemberData(nameof(All))]
    public async Task Add_Good_IsKeptWithItsRecord(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var manager = await laboratory.AddActor("Kari Moe", Roles.QualityManager);

        var added = await new KeepGrade(laboratory.Open, laboratory.Clock).Add(manager, NewGrade(), Cancel);
        var again = await new KeepGrade(laboratory.Open, laboratory.Clock).Add(manager, NewGrade(), Cancel);

        await using var lab = laboratory.Open();
        var grade = await lab.Grades.SingleAsync(Cancel);
        Assert.Equal((AnswerKind.Done, AnswerKind.Conflict), (added.Kind, again.Kind));
        Assert.Equal(("Gasoline 95", DecisionRule.Guarded, 4), (grade.Name, grade.Rule, grade.ResultsInAll));
        Assert.Equal("add grade", (await lab.AuditRecords.OrderByDescending(r => r.Sequence).FirstAsync(Cancel)).Action);
    }

    [Fact]
    public async Task Add_ByAnybodyElse_IsForbidden()
    {
        await using var laboratory = await TestLaboratory.Create(StorageEngine.Sqlite);
        var others = await laboratory.AddActor("Ida Berg", Roles.Analyst | Roles.ShiftChemist | Roles.BlendingEngineer | Roles.Administrator | Roles.Auditor);

        Assert.Equal(AnswerKind.Forbidden, (await new KeepGrade(laboratory.Open, laboratory.Clock).Add(others, NewGrade(), Cancel)).Kind);
        Assert.Equal(AnswerKind.Forbidden, (await new KeepTank(laboratory.Open).Add(others, new Tank { Code = "T-1", Name = "Tank 1" }, Cancel)).Kind);
        Assert.Equal(AnswerKind.Forbidden, (await new KeepSamplePoint(laboratory.Open).Add(others, new SamplePoint { Code = "P-1", Name = "Point" }, Cancel)).Kind);
    }

    [Fact]
    public async Task Add_Wrong_SaysAllProblemsBesideTheirFields()
    {
        await using var laboratory = await TestLaboratory.Create(StorageEngine.Sqlite);
        var manager = await laboratory.AddActor("Kari Moe", Roles.QualityManager);
        var wrong = new Grade
        {
            Code = "a b", Name = " ", Kind = SampleKind.Lpg, Confidence = 1m, ResultsInAll = 2,
            Tests = [new GradeTest("EN 13016-1", [Authority.Epa], false, 0), new GradeTest("by eye", [], false, 4), new GradeTest("EN 13016-1", [], false, 4)],
        };

        var answer = await new KeepGrade(laboratory.Open, laboratory.Clock).Add(manager, wrong, Cancel);

        Assert.Equal(AnswerKind.Invalid, answer.Kind);
        Assert.Equal(
            ["/code", "/confidence", "/name", "/resultsInAll", "/tests/0/authorities", "/tests/0/hoursToResult", "/tests/0/method", "/tests/1/method", "/tests/2/authorities", "/tests/2/method", "/tests/2/method"],
            answer.Problems.Select(p => p.Field).Order(StringComparer.Ordinal));
    }

    [Theory, MemberData(nameof(All))]
    public async Task Change_RuleAndKind_KindStaysOnceSampled(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var manager = await laboratory.AddActor("Kari Moe", Roles.QualityManager);
        await laboratory.Add(new LaboratorySettings { Name = "Fjordvik laboratory", TimeZone = "Europe/Oslo" }, NewGrade());
        await laboratory.Add(new Sample { Id = Guid.NewGuid(), Number = "S2600001A", GradeCode = "G95", SampledAt = laboratory.Clock.GetUtcNow(), SampledBy = "Ida Berg", RegisteredBy = manager.Id });
        var keep = new KeepGrade(laboratory.Open, laboratory.Clock);
        var version = await Version(laboratory);
        var simple = NewGrade();
        simple.Rule = DecisionRule.Simple;
        var solvent = NewGrade();
        solvent.Kind = SampleKind.Solvent;

        var changed = await keep.Change(manager, version, simple, Cancel);
        var stale = await keep.Change(manager, version, simple, Cancel);
        var other = await keep.Change(manager, await Version(laboratory), solvent, Cancel);

        Assert.Equal((AnswerKind.Done, AnswerKind.Conflict, AnswerKind.Invalid), (changed.Kind, stale.Kind, other.Kind));
        Assert.Equal("/kind", other.Problems[0].Field);
    }

    [Theory, MemberData(nameof(All))]
    public async Task Keep_TanksAndPoints_AddThenChange(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var manager = await laboratory.AddActor("Kari Moe", Roles.QualityManager);
        var (tanks, points) = (new KeepTank(laboratory.Open), new KeepSamplePoint(laboratory.Open));

        var tank = await tanks.Add(manager, new Tank { Code = "T-1", Name = "Tank 1", CapacityCubicMetres = 500m }, Cancel);
        var noGrade = await tanks.Add(manager, new Tank { Code = "T-2", Name = "Tank 2", GradeCode = "none", CapacityCubicMetres = 0m }, Cancel);
        var stale = await tanks.Change(manager, Guid.NewGuid(), new Tank { Code = "T-1", Name = "Tank one" }, Cancel);
        var line = new SamplePoint { Code = "P-1", Name = "Line", TankCode = "T-1" };
        var point = await points.Add(manager, line, Cancel);
        var renamed = await points.Change(manager, line, new SamplePoint { Code = "P-1", Name = "Transfer line" }, Cancel);
        var second = await points.Change(manager, line, new SamplePoint { Code = "P-1", Name = "Loading line" }, Cancel);
        var nowhere = await points.Change(manager, line, new SamplePoint { Code = "P-2", Name = "Line", TankCode = "T-9" }, Cancel);

        await using var lab = laboratory.Open();
        Assert.Equal((AnswerKind.Done, AnswerKind.Conflict, AnswerKind.Done, AnswerKind.Done), (tank.Kind, stale.Kind, point.Kind, renamed.Kind));
        Assert.Equal(AnswerKind.Conflict, second.Kind);
        Assert.StartsWith("P-1 was changed by Kari Moe meanwhile: name is Transfer line, was Line; tank code is empty, was T-1.", second.Text, StringComparison.Ordinal);
        Assert.Equal(["/capacity", "/grade"], noGrade.Problems.Select(p => p.Field));
        Assert.Equal("/tank", Assert.Single(nowhere.Problems).Field);
        Assert.Equal(("Transfer line", null), await lab.SamplePoints.Select(p => new ValueTuple<string, string?>(p.Name, p.TankCode)).SingleAsync(Cancel));
    }

    private static async Task<Guid> Version(TestLaboratory laboratory)
    {
        await using var lab = laboratory.Open();
        return await lab.Grades.Select(g => g.Version).SingleAsync(Cancel);
    }

    private static Grade NewGrade() => new()
    {
        Code = "G95",
        Name = "Gasoline 95",
        Rule = DecisionRule.Guarded,
        ResultsInAll = 4,
        Tests = [new GradeTest("EN 13016-1", [Authority.En], Duplicate: true, 4)],
    };
}
