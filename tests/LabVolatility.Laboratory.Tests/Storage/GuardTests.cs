using System.Data.Common;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Storage;

/// <summary>The rules that the database holds by itself, tried past the program where SQL can try them.</summary>
public sealed class GuardTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public static TheoryData<StorageEngine, string> RecordTables
    {
        get
        {
            var rows = new TheoryData<StorageEngine, string>();
            foreach (var table in (string[])["audit_records", "determinations", "determination_revisions", "results", "assessments", "decisions", "commands", "taken_ons", "verifications", "certificates", "cargoes", "cargo_tanks", "handover_notes", "handover_takings", "review_marks", "party_results", "party_withdrawals", "steps_taken", "container_openings", "tank_movements"])
            {
                rows.Add(StorageEngine.Sqlite, table);
                rows.Add(StorageEngine.Postgres, table);
            }

            return rows;
        }
    }

    [Theory, MemberData(nameof(RecordTables))]
    public async Task RecordTable_UpdatedOrDeleted_Refuses(StorageEngine engine, string table)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await FullScene.Create(laboratory);
        var column = table switch { "audit_records" => "actor", "taken_ons" or "party_withdrawals" or "handover_takings" => "at", "cargoes" => "ship", _ => "id" };

        var updated = await Assert.ThrowsAnyAsync<DbException>(() => laboratory.Raw($"UPDATE {table} SET \"{column}\" = \"{column}\""));
        var deleted = await Assert.ThrowsAnyAsync<DbException>(() => laboratory.Raw($"DELETE FROM {table}"));

        Assert.Contains($"append-only: rows of {table}", updated.Message, StringComparison.Ordinal);
        Assert.Contains($"append-only: rows of {table}", deleted.Message, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(RecordTables))]
    public async Task RecordTable_Replaced_Refuses(StorageEngine engine, string table)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await FullScene.Create(laboratory);

        // SQLite's way past a guard against deleting; PostgreSQL's way past row triggers.
        var refusal = await Assert.ThrowsAnyAsync<DbException>(() => laboratory.Raw(engine is StorageEngine.Sqlite
            ? $"INSERT OR REPLACE INTO {table} SELECT * FROM {table}"
            : $"TRUNCATE {table} CASCADE"));

        Assert.Matches("append-only: |same-key: |unbroken-chain: |one-decision-in-force: |one-test-a-container: ", refusal.Message);
    }

    [Fact]
    public async Task RecordTable_ReplicaSession_Refuses()
    {
        await using var laboratory = await TestLaboratory.Create(StorageEngine.Postgres);
        await FullScene.Create(laboratory);

        var refusal = await Assert.ThrowsAnyAsync<DbException>(() =>
            laboratory.Raw("SET session_replication_role = replica; DELETE FROM results"));

        Assert.Contains("append-only: ", refusal.Message, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Release_ByWhoMeasured_Refuses(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var scene = await Scene.Create(laboratory);

        var rule = await RefusedAsync(laboratory, scene.NewDecision(DecisionKind.Release, scene.Analyst, scene.Assessment));

        Assert.Equal(GuardRules.SecondPersonSigns, rule);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Concession_ByWhoAmended_Refuses(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var scene = await Scene.Create(laboratory);
        var amending = scene.NewRevision(2, scene.Chemist, "read again");
        await laboratory.Raw($"""
            INSERT INTO determination_revisions (id, determination_id, revision, at, "by", by_name, reason, set_aside, readings, handling, findings)
            SELECT {laboratory.Quoted(amending.Id)}, determination_id, 2, at, {laboratory.Quoted(scene.Chemist.Id)}, 'x', 'read again', set_aside, readings, handling, findings
            FROM determination_revisions
            """);

        var rule = await RefusedAsync(laboratory, scene.NewDecision(DecisionKind.Concession, scene.Chemist, scene.Assessment));

        Assert.Equal(GuardRules.SecondPersonSigns, rule);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Release_ByWhoTookOn_Refuses(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var scene = await Scene.Create(laboratory);
        await laboratory.Add(new TakenOn { DeterminationId = scene.Determination.Id, PersonId = scene.Chemist.Id, At = laboratory.Clock.GetUtcNow() });

        var rule = await RefusedAsync(laboratory, scene.NewDecision(DecisionKind.Release, scene.Chemist, scene.Assessment));

        Assert.Equal(GuardRules.SecondPersonSigns, rule);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Hold_ByWhoMeasured_IsKept(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var scene = await Scene.Create(laboratory);

        await laboratory.Add(scene.NewDecision(DecisionKind.Hold, scene.Analyst, null));

        await using var lab = laboratory.Open();
        Assert.Equal(1, await lab.Decisions.CountAsync(Cancel));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Release_OtherEvidence_Refuses(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var scene = await Scene.Create(laboratory);
        var other = scene.NewBatch();
        var elsewhere = scene.NewAssessment(other.Id);
        await laboratory.Add(other, elsewhere);

        var rule = await RefusedAsync(laboratory, scene.NewDecision(DecisionKind.Release, scene.Chemist, elsewhere));

        Assert.Equal(GuardRules.EvidenceIsFrozen, rule);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Concession_LegalLimitFails_Refuses(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var scene = await Scene.Create(laboratory);
        var failing = scene.NewAssessment(scene.Batch.Id, failsLegalLimit: true);
        await laboratory.Add(failing);

        var rule = await RefusedAsync(laboratory, scene.NewDecision(DecisionKind.Concession, scene.Chemist, failing));

        Assert.Equal(GuardRules.NoConcessionAgainstALegalLimit, rule);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Cargo_SignedByWhoMeasured_Refuses(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var scene = await Scene.Create(laboratory);
        var decision = scene.NewDecision(DecisionKind.Release, scene.Chemist, scene.Assessment);
        await laboratory.Add([new Tank { Code = "T-1", Name = "Tank 1" }, decision, .. scene.NewCargo(scene.Analyst)]);

        var rule = await RefusedAsync(laboratory, scene.NewCargoTank(decision));

        Assert.Equal(GuardRules.SecondPersonSigns, rule);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Cargo_ReleaseNoLongerInForce_Refuses(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var scene = await Scene.Create(laboratory);
        var decision = scene.NewDecision(DecisionKind.Release, scene.Chemist, scene.Assessment);
        await laboratory.Add([new Tank { Code = "T-1", Name = "Tank 1" }, decision, .. scene.NewCargo(scene.Chemist)]);
        await laboratory.Add(scene.NewDecision(DecisionKind.Withdraw, scene.Chemist, null, 2));

        var rule = await RefusedAsync(laboratory, scene.NewCargoTank(decision));

        Assert.Equal(GuardRules.CargoRestsOnReleases, rule);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Decision_PlaceInLineTaken_IsALostRace(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var scene = await Scene.Create(laboratory);
        await laboratory.Add(scene.NewDecision(DecisionKind.Release, scene.Chemist, scene.Assessment));
        await using var lab = laboratory.Open();
        lab.Act = TestLaboratory.Act;
        lab.Add(scene.NewDecision(DecisionKind.Hold, scene.Chemist, null));

        var refusal = await Assert.ThrowsAsync<DbUpdateException>(() => lab.SaveChangesAsync(Cancel));

        Assert.True(lab.IsUniqueViolation(refusal));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Determination_InstrumentOutOfService_Refuses(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var scene = await Scene.Create(laboratory);
        var sample = scene.NewSample(scene.Batch.Id);
        await laboratory.Add(sample);
        await laboratory.Raw($"UPDATE instruments SET in_service = {(engine is StorageEngine.Sqlite ? "0" : "false")}");

        var rule = await RefusedAsync(laboratory, scene.NewDetermination(sample));

        Assert.Equal(GuardRules.ReadyInstrumentOnly, rule);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Determination_ContainerUsed_Refuses(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var scene = await Scene.Create(laboratory);

        var rule = await RefusedAsync(laboratory, scene.NewDetermination(scene.Sample));

        Assert.Equal(GuardRules.OneTestAContainer, rule);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Determination_SameExternalId_IsALostRace(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var scene = await Scene.Create(laboratory);
        var (first, second) = (scene.NewSample(null), scene.NewSample(null));
        await laboratory.Add(first, second, scene.NewDetermination(first, "run 7"));
        await using var lab = laboratory.Open();
        lab.Act = TestLaboratory.Act;
        lab.Add(scene.NewDetermination(second, "run 7"));

        var refusal = await Assert.ThrowsAsync<DbUpdateException>(() => lab.SaveChangesAsync(Cancel));

        Assert.True(lab.IsUniqueViolation(refusal));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Amendment_WithoutReason_Refuses(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await Scene.Create(laboratory);

        var refusal = await Assert.ThrowsAnyAsync<DbException>(() => laboratory.Raw($"""
            INSERT INTO determination_revisions (id, determination_id, revision, at, "by", by_name, reason, set_aside, readings, handling, findings)
            SELECT {laboratory.Quoted(Guid.NewGuid())}, determination_id, 2, at, "by", by_name, '  ', set_aside, readings, handling, findings
            FROM determination_revisions
            """));

        Assert.Contains("amendment_has_a_reason", refusal.Message, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task AuditRecord_SlippedIn_Refuses(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await laboratory.AddPerson("Ida Berg", Roles.Analyst);

        var refusal = await Assert.ThrowsAnyAsync<DbException>(() => laboratory.Raw("""
            INSERT INTO audit_records (sequence, at, actor, origin, action, subject, subject_id, build, previous_hash, hash)
            SELECT sequence + 1, at, actor, origin, action, subject, subject_id, build, previous_hash, hash FROM audit_records
            """));

        Assert.Contains("unbroken-chain: ", refusal.Message, StringComparison.Ordinal);
    }

    private static async Task<string?> RefusedAsync(TestLaboratory laboratory, object thing)
    {
        await using var lab = laboratory.Open();
        lab.Act = TestLaboratory.Act;
        lab.Add(thing);
        var refusal = await Assert.ThrowsAsync<DbUpdateException>(() => lab.SaveChangesAsync(Cancel));
        return lab.RuleOf(refusal);
    }
}
