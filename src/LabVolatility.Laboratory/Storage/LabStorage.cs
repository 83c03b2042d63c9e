using LabVolatility.Laboratory.Storage.Postgres;
using LabVolatility.Laboratory.Storage.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Microsoft.Extensions.Logging;
using Npgsql;

namespace LabVolatility.Laboratory.Storage;

/// <summary>Registers, migrates and checks the laboratory's database.</summary>
public static class LabStorage
{
    /// <summary>Adds Func&lt;LabContext&gt; for use cases, and a scoped LabContext for sign-in and its keys.</summary>
    public static IServiceCollection AddLabStorage(this IServiceCollection services, StorageOptions options)
    {
        services.AddSingleton(options);
        services.TryAddSingleton(TimeProvider.System);
        services.AddSingleton(provider => Opener(
            options.Engine, options.Connection, provider.GetRequiredService<TimeProvider>(), provider.GetService<ILoggerFactory>()));
        services.AddScoped(provider => provider.GetRequiredService<Func<LabContext>>()());
        return services;
    }

    /// <summary>Brings the database to the newest version, then makes sure that its guards stand.</summary>
    /// <exception cref="InvalidOperationException">A guard is missing or was changed.</exception>
    public static async Task MigrateAsync(IServiceProvider services, CancellationToken cancellationToken = default)
    {
        var options = services.GetRequiredService<StorageOptions>();
        var open = services.GetRequiredService<Func<LabContext>>();
        if (options is { Engine: StorageEngine.Sqlite })
            PrepareFolder(options.DataFolder);
        var openAsOwner = options.MigrationConnection is { } owner
            ? Opener(options.Engine, owner, services.GetRequiredService<TimeProvider>(), services.GetService<ILoggerFactory>())
            : open;
        await using (var lab = openAsOwner())
        {
            await lab.Engine.MigrateAsync(lab, cancellationToken);
            if (options.MigrationConnection is not null)
                await PostgresRole.GrantAsync(lab, new NpgsqlConnectionStringBuilder(options.Connection).Username ?? "", cancellationToken);
        }

        await using var checking = open();
        await CheckGuardsAsync(checking, cancellationToken);
    }

    internal static async Task CheckGuardsAsync(LabContext lab, CancellationToken cancellationToken)
    {
        var lost = await lab.Engine.LostGuardsAsync(lab, cancellationToken);
        if (lost.Count > 0)
        {
            throw new InvalidOperationException(
                $"The database has lost guards of its records, or they were changed: {string.Join("; ", lost)}. Check the records, find out who did it, and put the guards back before starting.");
        }
    }

    /// <summary>Opens a context a call, cheaply.</summary>
    internal static Func<LabContext> Opener(StorageEngine engine, string connection, TimeProvider clock, ILoggerFactory? logs = null)
    {
        if (engine is StorageEngine.Postgres)
        {
            var postgres = new DbContextOptionsBuilder<PostgresLabContext>().UseNpgsql(connection).UseLoggerFactory(logs).Options;
            return () => new PostgresLabContext(postgres, clock);
        }

        var sqlite = new DbContextOptionsBuilder<SqliteLabContext>()
            .UseSqlite(connection).AddInterceptors(new SqliteConnections()).UseLoggerFactory(logs).Options;
        return () => new SqliteLabContext(sqlite, clock);
    }

    // SQLite knows no roles: the folder belongs to the program's account alone.
    internal static void PrepareFolder(string folder)
    {
        if (Directory.Exists(folder))
            return;
        if (OperatingSystem.IsWindows())
            Directory.CreateDirectory(folder);
        else
            Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }
}
