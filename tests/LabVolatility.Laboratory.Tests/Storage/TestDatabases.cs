using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.Data.Sqlite;
using Npgsql;
using Xunit;

[assembly: AssemblyFixture(typeof(TestDatabases))]

namespace LabVolatility.Laboratory.Tests.Storage;

/// <summary>A migrated template for each engine, made once; each test gets a copy of its own.</summary>
public sealed class TestDatabases : IAsyncDisposable
{
    private const string Template = "lab_template";

    private static readonly SemaphoreSlim OneAtATime = new(1);
    private static readonly string Run = Guid.NewGuid().ToString("N")[..8];

    private static string? _sqliteFolder;
    private static string? _postgres;
    private static IAsyncDisposable? _owned;

    /// <summary>The connection string of a database with the schema and no rows.</summary>
    internal static async Task<string> NewAsync(StorageEngine engine)
    {
        await OneAtATime.WaitAsync();
        try
        {
            return engine is StorageEngine.Postgres ? await NewPostgresAsync(migrated: true) : await NewSqliteAsync();
        }
        finally
        {
            OneAtATime.Release();
        }
    }

    /// <summary>The connection string of a database without any table.</summary>
    internal static async Task<string> NewEmptyAsync(StorageEngine engine)
    {
        await OneAtATime.WaitAsync();
        try
        {
            return engine is StorageEngine.Postgres ? await NewPostgresAsync(migrated: false) : SqliteConnectionOf(NewFile(Folder()));
        }
        finally
        {
            OneAtATime.Release();
        }
    }

    internal static async Task DropAsync(StorageEngine engine, string connection)
    {
        if (engine is StorageEngine.Sqlite)
        {
            await using var file = new SqliteConnection(connection);
            SqliteConnection.ClearPool(file);
            foreach (var path in Directory.GetFiles(Folder(), Path.GetFileName(file.DataSource) + "*"))
                File.Delete(path);
            return;
        }

        await using (var pooled = new NpgsqlConnection(connection))
            NpgsqlConnection.ClearPool(pooled);
        await OnServerAsync($"DROP DATABASE IF EXISTS \"{new NpgsqlConnectionStringBuilder(connection).Database}\" WITH (FORCE)");
    }

    /// <summary>Runs a statement on the server's own database, as the owner.</summary>
    internal static async Task OnServerAsync(string sql)
    {
        await using var server = new NpgsqlConnection(_postgres);
        await server.OpenAsync();
        await using var command = new NpgsqlCommand(sql, server);
        await command.ExecuteNonQueryAsync();
    }

    public async ValueTask DisposeAsync()
    {
        SqliteConnection.ClearAllPools();
        if (_sqliteFolder is not null)
            Directory.Delete(_sqliteFolder, recursive: true);
        if (_postgres is not null)
        {
            NpgsqlConnection.ClearAllPools();
            await OnServerAsync($"DROP DATABASE IF EXISTS {Template}_{Run} WITH (FORCE)");
            NpgsqlConnection.ClearAllPools();
        }

        if (_owned is not null)
            await _owned.DisposeAsync();
    }

    private static string Folder() => _sqliteFolder ??= Directory.CreateTempSubdirectory("lab-sqlite-").FullName;

    private static string NewFile(string folder) => Path.Combine(folder, $"{Guid.NewGuid():N}.db");

    private static string SqliteConnectionOf(string file) => new SqliteConnectionStringBuilder { DataSource = file }.ToString();

    private static async Task<string> NewSqliteAsync()
    {
        var template = Path.Combine(Folder(), $"{Template}.db");
        if (!File.Exists(template))
        {
            await MigrateAsync(StorageEngine.Sqlite, SqliteConnectionOf(template));
            SqliteConnection.ClearAllPools();
        }

        var file = NewFile(Folder());
        File.Copy(template, file);
        return SqliteConnectionOf(file);
    }

    private static async Task<string> NewPostgresAsync(bool migrated)
    {
        if (_postgres is null)
        {
            (_postgres, _owned) = await PostgresServer.FindAsync();
            await OnServerAsync($"CREATE DATABASE {Template}_{Run}");
            await MigrateAsync(StorageEngine.Postgres, On($"{Template}_{Run}", pooling: false));
        }

        var name = $"lab_{Guid.NewGuid():N}";
        await OnServerAsync($"CREATE DATABASE {name} TEMPLATE {(migrated ? $"{Template}_{Run}" : "template0")}");
        return On(name, pooling: true);
    }

    private static string On(string database, bool pooling) =>
        new NpgsqlConnectionStringBuilder(_postgres) { Database = database, Pooling = pooling, MaxPoolSize = 20, IncludeErrorDetail = true }.ToString();

    private static async Task MigrateAsync(StorageEngine engine, string connection)
    {
        await using var lab = LabStorage.Opener(engine, connection, TimeProvider.System)();
        await lab.Engine.MigrateAsync(lab, CancellationToken.None);
    }
}
