using System.Data.Common;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage.Postgres;
using LabVolatility.Laboratory.Storage.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Logging.Abstractions;
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
        services.AddSingleton(provider => new NoticeBoard(Log<NoticeBoard>(provider)));
        services.AddSingleton(provider => Opener(
            options.Engine, options.Connection, provider.GetRequiredService<TimeProvider>(), provider.GetService<ILoggerFactory>(),
            provider.GetRequiredService<NoticeBoard>()));
        services.AddSingleton(provider => new Presence(
            provider.GetRequiredService<TimeProvider>(), options.Engine is StorageEngine.Postgres ? Teller(provider) : null));
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

    /// <summary>Hears what all nodes change and who is where, and hands it to the open pages, until cancelled.</summary>
    public static Task ListenAsync(IServiceProvider services, CancellationToken cancellationToken)
    {
        var options = services.GetRequiredService<StorageOptions>();
        var board = services.GetRequiredService<NoticeBoard>();
        var presence = services.GetRequiredService<Presence>();
        var listening = options.Engine is StorageEngine.Postgres
            ? new PostgresListener(options.Connection, board, presence, services.GetRequiredService<TimeProvider>(), Log<PostgresListener>(services))
                .RunAsync(cancellationToken)
            : Task.CompletedTask;
        return Task.WhenAll(
            listening, presence.RunAsync(cancellationToken), board.RunAsync(services.GetRequiredService<Func<LabContext>>(), cancellationToken));
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

    /// <summary>Opens a context a call, cheaply. Without a board nobody is told what is changed.</summary>
    internal static Func<LabContext> Opener(
        StorageEngine engine, string connection, TimeProvider clock, ILoggerFactory? logs = null, NoticeBoard? board = null)
    {
        if (engine is StorageEngine.Postgres)
        {
            var postgres = new DbContextOptionsBuilder<PostgresLabContext>().UseNpgsql(connection)
                .AddInterceptors(board is null ? [] : [new PostgresNotices()]).UseLoggerFactory(logs).Options;
            return () => new PostgresLabContext(postgres, clock);
        }

        var sqlite = new DbContextOptionsBuilder<SqliteLabContext>()
            .UseSqlite(connection).AddInterceptors(new SqliteConnections())
            .AddInterceptors(board is null ? [] : [new SqliteNotices(board)]).UseLoggerFactory(logs).Options;
        return () => new SqliteLabContext(sqlite, clock);
    }

    /// <summary>Opens contexts on a connection that is open already and stays so.</summary>
    internal static Func<LabContext> Opener(StorageEngine engine, DbConnection connection, TimeProvider clock)
    {
        if (engine is StorageEngine.Postgres)
        {
            var postgres = new DbContextOptionsBuilder<PostgresLabContext>().UseNpgsql(connection).Options;
            return () => new PostgresLabContext(postgres, clock);
        }

        var sqlite = new DbContextOptionsBuilder<SqliteLabContext>().UseSqlite(connection).Options;
        return () => new SqliteLabContext(sqlite, clock);
    }

    private static Func<string, CancellationToken, Task> Teller(IServiceProvider services)
    {
        var open = services.GetRequiredService<Func<LabContext>>();
        return async (text, cancellationToken) =>
        {
            await using var lab = open();
            await PostgresNotices.NotifyAsync(lab, PostgresListener.People, text, cancellationToken);
        };
    }

    private static ILogger<T> Log<T>(IServiceProvider services) =>
        services.GetService<ILogger<T>>() ?? NullLogger<T>.Instance;

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
