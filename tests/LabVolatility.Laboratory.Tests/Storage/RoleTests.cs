using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Npgsql;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Storage;

/// <summary>PostgreSQL with two roles: an owner that migrates, and the program's, which owns nothing.</summary>
public sealed class RoleTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task ProgramsRole_DayOfWork_NeedsNoMoreRights()
    {
        await using var laboratory = await TestLaboratory.Create(StorageEngine.Postgres);
        await using var role = await ProgramsRole.Create(laboratory);

        var scene = await FullScene.Create(laboratory.As(role.Connection));
        await using (var lab = role.Open())
        {
            lab.Act = TestLaboratory.Act;
            (await lab.Tanks.SingleAsync(Cancel)).Name = "Tank one";
            await lab.NextAsync("sample 2026", Cancel);
            await lab.SaveChangesAsync(Cancel);
            await lab.Drafts.Where(d => d.TestId == scene.Sample.Id).ExecuteDeleteAsync(Cancel);
        }

        var report = await new CheckRecords(role.Open).Run(Cancel);
        Assert.Empty(report.Findings);
        Assert.True(report.Records > 10);
    }

    [Theory]
    [InlineData("UPDATE results SET reported = '1'")]
    [InlineData("DELETE FROM audit_records")]
    [InlineData("TRUNCATE decisions CASCADE")]
    [InlineData("ALTER TABLE results DISABLE TRIGGER ALL")]
    [InlineData("DROP TRIGGER results_no_rewriting ON results")]
    [InlineData("SET session_replication_role = replica")]
    [InlineData("INSERT INTO \"__EFMigrationsHistory\" VALUES ('x', 'y')")]
    public async Task ProgramsRole_RewritingRecords_HasNoRight(string sql)
    {
        await using var laboratory = await TestLaboratory.Create(StorageEngine.Postgres);
        await using var role = await ProgramsRole.Create(laboratory);
        await using var lab = role.Open();

        var refusal = await Assert.ThrowsAsync<PostgresException>(() => lab.Database.ExecuteSqlRawAsync(sql, Cancel));

        Assert.Equal(PostgresErrorCodes.InsufficientPrivilege, refusal.SqlState);
    }

    [Fact]
    public async Task Guard_TemporaryTableInFront_StillRefuses()
    {
        await using var laboratory = await TestLaboratory.Create(StorageEngine.Postgres);
        var scene = await Scene.Create(laboratory);
        await using var lab = laboratory.Open();
        await lab.Database.OpenConnectionAsync(Cancel);
        await lab.Database.ExecuteSqlRawAsync("CREATE TEMP TABLE determinations (LIKE public.determinations)", Cancel);
        lab.Act = TestLaboratory.Act;
        lab.Add(scene.NewDecision(DecisionKind.Release, scene.Analyst, scene.Assessment));

        var refusal = await Assert.ThrowsAsync<DbUpdateException>(() => lab.SaveChangesAsync(Cancel));

        Assert.Equal(GuardRules.SecondPersonSigns, lab.RuleOf(refusal));
    }

    private sealed class ProgramsRole : IAsyncDisposable
    {
        private readonly string _name;
        private readonly TestLaboratory _laboratory;

        private ProgramsRole(TestLaboratory laboratory, string name)
        {
            (_laboratory, _name) = (laboratory, name);
            Connection = new NpgsqlConnectionStringBuilder(laboratory.Connection) { Username = name, Password = name }.ToString();
            Open = LabStorage.Opener(StorageEngine.Postgres, Connection, laboratory.Clock);
        }

        public string Connection { get; }

        public Func<LabContext> Open { get; }

        public static async Task<ProgramsRole> Create(TestLaboratory laboratory)
        {
            var role = new ProgramsRole(laboratory, $"lab_role_{Guid.NewGuid():N}");
            await TestDatabases.OnServerAsync($"CREATE ROLE {role._name} LOGIN PASSWORD '{role._name}'");
            await using var services = new ServiceCollection()
                .AddLabStorage(new StorageOptions(StorageEngine.Postgres, role.Connection, laboratory.Connection, Path.GetTempPath())).BuildServiceProvider();
            await LabStorage.MigrateAsync(services, Cancel);
            return role;
        }

        public async ValueTask DisposeAsync()
        {
            await using (var pooled = new NpgsqlConnection(Connection))
                NpgsqlConnection.ClearPool(pooled);
            await _laboratory.Raw($"DROP OWNED BY {_name}");
            await TestDatabases.OnServerAsync($"DROP ROLE {_name}");
        }
    }
}
