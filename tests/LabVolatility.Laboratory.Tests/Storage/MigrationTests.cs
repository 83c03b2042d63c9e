using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Storage;

public sealed class MigrationTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task MigrateAsync_EmptyDatabase_GuardsStand(StorageEngine engine)
    {
        var connection = await TestDatabases.NewEmptyAsync(engine);
        await using var services = Services(engine, connection);

        await LabStorage.MigrateAsync(services, Cancel);
        await LabStorage.MigrateAsync(services, Cancel);

        await using var lab = services.GetRequiredService<Func<LabContext>>()();
        Assert.Empty(await lab.Database.GetPendingMigrationsAsync(Cancel));
        Assert.Empty(await lab.Engine.LostGuardsAsync(lab, Cancel));
        await TestDatabases.DropAsync(engine, connection);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Model_AsItIs_HasItsMigration(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await using var lab = laboratory.Open();

        Assert.False(lab.Database.HasPendingModelChanges(), "Add a migration to both engines.");
    }

    [Fact]
    public async Task MigrateAsync_ThreeNodesAtOnce_AllReady()
    {
        var connection = await TestDatabases.NewEmptyAsync(StorageEngine.Postgres);
        await using var services = Services(StorageEngine.Postgres, connection);

        await Task.WhenAll(Enumerable.Range(0, 3).Select(_ => LabStorage.MigrateAsync(services, Cancel)));

        await using var lab = services.GetRequiredService<Func<LabContext>>()();
        Assert.Empty(await lab.Database.GetPendingMigrationsAsync(Cancel));
        await TestDatabases.DropAsync(StorageEngine.Postgres, connection);
    }

    [Fact]
    public async Task MigrateAsync_LockLeftByACrash_GoesOn()
    {
        await using var laboratory = await TestLaboratory.Create(StorageEngine.Sqlite);
        await laboratory.Raw("INSERT INTO \"__EFMigrationsLock\" (\"Id\", \"Timestamp\") VALUES (1, '2026-01-01')");
        await using var lab = laboratory.Open();

        await lab.Engine.MigrateAsync(lab, Cancel).WaitAsync(TimeSpan.FromSeconds(30), Cancel);

        Assert.Empty(await lab.Database.GetPendingMigrationsAsync(Cancel));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task MigrateAsync_GuardDropped_FailsAndNamesIt(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var trigger = engine is StorageEngine.Sqlite ? "decisions_no_update" : "decisions_no_rewriting";
        await laboratory.Raw(engine is StorageEngine.Sqlite ? $"DROP TRIGGER {trigger}" : $"DROP TRIGGER {trigger} ON decisions");
        await using var services = Services(engine, laboratory.Connection);

        var refusal = await Assert.ThrowsAsync<InvalidOperationException>(() => LabStorage.MigrateAsync(services, Cancel));

        Assert.Contains($"decisions: {trigger}", refusal.Message, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task MigrateAsync_GuardMadeToothless_FailsAndNamesIt(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        const string Trigger = "determinations_ready_instrument_only";
        await laboratory.Raw(engine is StorageEngine.Sqlite
            ? $"DROP TRIGGER {Trigger}; CREATE TRIGGER {Trigger} BEFORE INSERT ON determinations BEGIN SELECT 1; END"
            : $"CREATE OR REPLACE FUNCTION {Trigger}() RETURNS trigger LANGUAGE plpgsql AS $f$ BEGIN RETURN NEW; END $f$");
        await using var services = Services(engine, laboratory.Connection);

        var refusal = await Assert.ThrowsAsync<InvalidOperationException>(() => LabStorage.MigrateAsync(services, Cancel));

        Assert.Contains(Trigger, refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task MigrateAsync_GuardDisabled_FailsAndNamesIt()
    {
        await using var laboratory = await TestLaboratory.Create(StorageEngine.Postgres);
        await laboratory.Raw("ALTER TABLE results DISABLE TRIGGER results_no_rewriting");
        await using var services = Services(StorageEngine.Postgres, laboratory.Connection);

        var refusal = await Assert.ThrowsAsync<InvalidOperationException>(() => LabStorage.MigrateAsync(services, Cancel));

        Assert.Contains("results: results_no_rewriting", refusal.Message, StringComparison.Ordinal);
    }

    private static ServiceProvider Services(StorageEngine engine, string connection) =>
        new ServiceCollection().AddLabStorage(new StorageOptions(engine, connection, null, Path.GetTempPath())).BuildServiceProvider();
}
