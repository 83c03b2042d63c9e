using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Storage;

public sealed class SavingTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Save_NoAct_Refuses(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await using var lab = laboratory.Open();
        lab.Tanks.Add(new Tank { Code = "T-1", Name = "Tank 1" });

        var refusal = await Assert.ThrowsAsync<InvalidOperationException>(() => lab.SaveChangesAsync(Cancel));

        Assert.Contains("No write without an audit record", refusal.Message, StringComparison.Ordinal);
        Assert.Equal((0, 0), await CountAsync(laboratory));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Save_Synchronous_Refuses(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await using var lab = laboratory.Open();
        lab.Act = TestLaboratory.Act;
        lab.Tanks.Add(new Tank { Code = "T-1", Name = "Tank 1" });

        Assert.Throws<NotSupportedException>(() => lab.SaveChanges());
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Save_AddedChangedDeleted_RecordsEach(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await using var lab = laboratory.Open();
        lab.Act = new Act(Guid.CreateVersion7(), "Ida Berg", "page", "keep tank", "moved");
        var tank = new Tank { Code = "T-1", Name = "Tank 1", CapacityCubicMetres = 12000.50m };
        lab.Tanks.Add(tank);
        await lab.SaveChangesAsync(Cancel);
        tank.Name = "Tank one";
        await lab.SaveChangesAsync(Cancel);
        lab.Tanks.Remove(tank);
        await lab.SaveChangesAsync(Cancel);

        var records = await lab.AuditRecords.AsNoTracking().OrderBy(r => r.Sequence).ToListAsync(Cancel);

        const string First = """{"capacityCubicMetres":12000.5,"code":"T-1","name":"Tank 1"}""";
        const string Second = """{"capacityCubicMetres":12000.5,"code":"T-1","name":"Tank one"}""";
        Assert.Equal([(null, First), (First, Second), (Second, null)], records.Select(r => (r.Before, r.After)));
        Assert.All(records, r => Assert.Equal(("Ida Berg", "keep tank", "tank", "T-1", "moved"), (r.Actor, r.Action, r.Subject, r.SubjectId, r.Reason)));
        Assert.All(records, r => Assert.Equal(laboratory.Clock.GetUtcNow(), r.At));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Save_AuditRecordFails_WritesNothing(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await BreakTheTrail(laboratory);
        await using var lab = laboratory.Open();
        lab.Act = TestLaboratory.Act;
        lab.Tanks.Add(new Tank { Code = "T-1", Name = "Tank 1" });

        await Assert.ThrowsAnyAsync<Exception>(() => lab.SaveChangesAsync(Cancel));

        Assert.Equal((0, 0), await CountAsync(laboratory));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Save_AuditRecordFailsAndCallerCommits_WritesNothing(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await BreakTheTrail(laboratory);
        await using var lab = laboratory.Open();
        lab.Act = TestLaboratory.Act;
        await using var transaction = await lab.BeginWriteAsync(Cancel);
        lab.Tanks.Add(new Tank { Code = "T-1", Name = "Tank 1" });

        await Assert.ThrowsAnyAsync<Exception>(() => lab.SaveChangesAsync(Cancel));
        await transaction.CommitAsync(Cancel);

        Assert.Equal((0, 0), await CountAsync(laboratory));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Save_RolledBack_BurnsNoNumber(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await using (var lab = laboratory.Open())
        {
            lab.Act = TestLaboratory.Act;
            await using var transaction = await lab.BeginWriteAsync(Cancel);
            lab.Tanks.Add(new Tank { Code = "T-1", Name = "Tank 1" });
            await lab.SaveChangesAsync(Cancel);
            Assert.Equal(1, await lab.NextAsync("certificate 2026", Cancel));
            await transaction.RollbackAsync(Cancel);
        }

        await laboratory.Add(new Tank { Code = "T-2", Name = "Tank 2" });

        await using var after = laboratory.Open();
        Assert.Equal([1L], await after.AuditRecords.Select(r => r.Sequence).ToListAsync(Cancel));
        Assert.Equal(1, await after.NextAsync("certificate 2026", Cancel));
        Assert.Equal(2, await after.NextAsync("certificate 2026", Cancel));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Save_EightWritersAtOnce_LeaveAGapFreeChain(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);

        await Task.WhenAll(Enumerable.Range(0, 8).Select(writer => Task.Run(async () =>
        {
            for (var i = 0; i < 25; i++)
            {
                await using var lab = laboratory.Open();
                lab.Act = TestLaboratory.Act;
                await using var transaction = await lab.BeginWriteAsync(Cancel);
                var number = await lab.NextAsync("tank", Cancel);
                lab.Tanks.Add(new Tank { Code = $"T-{number}", Name = $"Tank of writer {writer}" });
                await lab.SaveChangesAsync(Cancel);
                await transaction.CommitAsync(Cancel);
            }
        }, Cancel)));

        var report = await new CheckRecords(laboratory.Open).Run(Cancel);
        Assert.Empty(report.Findings);
        Assert.Equal((true, 200L), (report.Intact, report.Records));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Save_ReportedFactChanged_NamesAmending(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await Scene.Create(laboratory);
        await using var lab = laboratory.Open();
        lab.Act = TestLaboratory.Act;
        lab.Results.Remove(await lab.Results.FirstAsync(Cancel));

        var refusal = await Assert.ThrowsAsync<InvalidOperationException>(() => lab.SaveChangesAsync(Cancel));

        Assert.Contains("amend the result", refusal.Message, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Save_ChangedMeanwhile_Conflicts(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await laboratory.Add(new Tank { Code = "T-1", Name = "Tank 1" });
        await using var mine = laboratory.Open();
        await using var theirs = laboratory.Open();
        mine.Act = theirs.Act = TestLaboratory.Act;
        (await mine.Tanks.SingleAsync(Cancel)).Name = "mine";
        (await theirs.Tanks.SingleAsync(Cancel)).Name = "theirs";
        await theirs.SaveChangesAsync(Cancel);

        await Assert.ThrowsAsync<DbUpdateConcurrencyException>(() => mine.SaveChangesAsync(Cancel));

        Assert.Equal((1, 2), await CountAsync(laboratory));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Save_OnlyATasteChanged_NeedsNoAct(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await laboratory.AddPerson("Ida Berg", Roles.Analyst);
        await using var lab = laboratory.Open();
        var person = await lab.People.SingleAsync(Cancel);
        person.Theme = "dark";
        person.AccessFailedCount = 3;
        lab.Update(person);

        await lab.SaveChangesAsync(Cancel);

        Assert.Equal((0, 1), await CountAsync(laboratory));
        await using var after = laboratory.Open();
        Assert.Equal("dark", (await after.People.SingleAsync(Cancel)).Theme);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Save_DetachedThingUpdated_RecordsWhatWasThere(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var person = await laboratory.AddPerson("Ida Berg", Roles.Analyst);
        await using var lab = laboratory.Open();
        lab.Act = TestLaboratory.Act;
        person.Roles = Roles.Analyst | Roles.Administrator;
        lab.Update(person);

        await lab.SaveChangesAsync(Cancel);

        var record = await lab.AuditRecords.AsNoTracking().OrderByDescending(r => r.Sequence).FirstAsync(Cancel);
        Assert.Contains("\"roles\":\"Analyst\"", record.Before, StringComparison.Ordinal);
        Assert.Contains("\"roles\":\"Analyst, Administrator\"", record.After, StringComparison.Ordinal);
        Assert.DoesNotContain("Hash", record.After, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("stamp", record.After, StringComparison.OrdinalIgnoreCase);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Save_WhatOneEngineCannotKeep_RefusesOnBoth(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);

        var tooLong = await Assert.ThrowsAsync<InvalidOperationException>(() => laboratory.Add(new Tank { Code = new string('T', 41), Name = "x" }));
        var nul = await Assert.ThrowsAsync<InvalidOperationException>(() => laboratory.Add(new Tank { Code = "T-1", Name = "a\0b" }));
        var tooBig = await Assert.ThrowsAsync<InvalidOperationException>(() =>
            laboratory.Add(new Tank { Code = "T-1", Name = "x", CapacityCubicMetres = 1_000_000_000_000_000_000m }));

        Assert.Contains("longer than 40", tooLong.Message, StringComparison.Ordinal);
        Assert.Contains("NUL", nul.Message, StringComparison.Ordinal);
        Assert.Contains("18 digits", tooBig.Message, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Save_EveryKindOfValue_ComesBackEqual(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var scene = await FullScene.Create(laboratory);
        await using var lab = laboratory.Open();

        var determination = await lab.Determinations.AsNoTracking().Include(d => d.Revisions).Include(d => d.Results).SingleAsync(Cancel);
        var sample = await lab.Samples.AsNoTracking().SingleAsync(Cancel);
        var certificate = await lab.Certificates.AsNoTracking().SingleAsync(c => c.Number == "C-1", Cancel);

        Assert.Equivalent(scene.Determination.Revisions[0].Readings, determination.Revisions[0].Readings, strict: true);
        Assert.Equal(scene.Determination.Revisions[0].Findings, determination.Revisions[0].Findings);
        Assert.Equal(63.77m, determination.Results[0].Value);
        Assert.Equal(scene.Sample.SampledAt, sample.SampledAt);
        Assert.Equal([1, 2, 3], certificate.Pdf);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Save_SettingsAndDraft_KeepLists(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var scene = await Scene.Create(laboratory);
        await laboratory.Add(
            new LaboratorySettings { Name = "Laboratory", TimeZone = "Europe/Oslo" },
            new BenchDraft { Id = Guid.CreateVersion7(), TestId = scene.Sample.Tests[0].Id, PersonId = scene.Analyst.Id, Content = "{}", SavedAt = laboratory.Clock.GetUtcNow() });
        await using var lab = laboratory.Open();

        var settings = await lab.Settings.SingleAsync(Cancel);
        var batch = await lab.Batches.OrderByDescending(b => b.CreatedAt).FirstAsync(b => b.CreatedAt <= laboratory.Clock.GetUtcNow(), Cancel);

        Assert.Equal([new TimeOnly(6, 0), new TimeOnly(14, 0), new TimeOnly(22, 0)], settings.ShiftStarts);
        Assert.Equal(scene.Batch.Destinations, batch.Destinations);
    }

    // A stand-in for a disk error: the audit record, and only that, can't be written.
    private static Task<int> BreakTheTrail(TestLaboratory laboratory) => laboratory.Raw(laboratory.Engine is StorageEngine.Sqlite
        ? "CREATE TRIGGER broken BEFORE INSERT ON audit_records BEGIN SELECT RAISE(ABORT, 'no room left'); END"
        : "CREATE FUNCTION broken() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN RAISE EXCEPTION 'no room left'; END $$; CREATE TRIGGER broken BEFORE INSERT ON audit_records FOR EACH ROW EXECUTE FUNCTION broken()");

    private static async Task<(int Tanks, int Records)> CountAsync(TestLaboratory laboratory)
    {
        await using var lab = laboratory.Open();
        return (await lab.Tanks.CountAsync(Cancel), await lab.AuditRecords.CountAsync(Cancel));
    }
}
