using System.Data.Common;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace LabVolatility.Laboratory.Storage.Sqlite;

/// <summary>How each connection to the file behaves.</summary>
/// <remarks>
/// synchronous=FULL: what was confirmed survives a power cut. recursive_triggers: INSERT OR REPLACE fires the guards
/// against deleting. lower() and upper() as .NET knows them, so that a search finds what it finds on PostgreSQL.
/// </remarks>
internal sealed class SqliteConnections : DbConnectionInterceptor
{
    private const string Pragmas = """
        PRAGMA busy_timeout = 15000;
        PRAGMA journal_mode = WAL;
        PRAGMA synchronous = FULL;
        PRAGMA foreign_keys = ON;
        PRAGMA recursive_triggers = ON;
        """;

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData) => Prepare(connection);

    public override Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        Prepare(connection);
        return Task.CompletedTask;
    }

    private static void Prepare(DbConnection connection)
    {
        var file = (SqliteConnection)connection;
        file.CreateFunction("lower", (string? text) => text?.ToLowerInvariant(), isDeterministic: true);
        file.CreateFunction("upper", (string? text) => text?.ToUpperInvariant(), isDeterministic: true);
        using var command = connection.CreateCommand();
        command.CommandText = Pragmas;
        command.ExecuteNonQuery();
    }
}
