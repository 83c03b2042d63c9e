using LabVolatility.Laboratory.Storage.Postgres;
using LabVolatility.Laboratory.Storage.Sqlite;
using Microsoft.Data.Sqlite;

namespace LabVolatility.Laboratory.Storage;

/// <summary>Backs the database up while it is in use, and puts a copy back where nothing is.</summary>
public static class DatabaseCopy
{
    /// <summary>Writes a copy; a file that is there is never written over.</summary>
    /// <exception cref="InvalidOperationException">It can't be done; the message says why.</exception>
    public static Task WriteAsync(StorageOptions options, string file)
    {
        if (Path.Exists(file))
            throw new InvalidOperationException($"{file} is there already; name a new file.");
        if (options.Engine is StorageEngine.Postgres)
            return PostgresCopy.WriteAsync(options.MigrationConnection ?? options.Connection, file);
        DemandFile(options);
        return SqliteCopy.CopyAsync(SqliteFile(options), file);
    }

    /// <summary>Puts a copy in the place of a database that isn't there or is empty; records are never written over.</summary>
    /// <exception cref="InvalidOperationException">It can't be done; the message says why.</exception>
    public static Task ReadAsync(string file, StorageOptions options)
    {
        if (!File.Exists(file))
            throw new InvalidOperationException($"There is no file {file}.");
        if (options.Engine is StorageEngine.Postgres)
            return PostgresCopy.ReadAsync(file, options.MigrationConnection ?? options.Connection);
        var database = SqliteFile(options);
        if (Path.Exists(database))
            throw new InvalidOperationException($"{database} is there already, and records are never written over. Stop the application and move it away first.");
        LabStorage.PrepareFolder(Path.GetDirectoryName(Path.GetFullPath(database))!);
        return SqliteCopy.CopyAsync(file, database);
    }

    /// <summary>A command that reads must not make an empty database and call it fine.</summary>
    /// <exception cref="InvalidOperationException">The SQLite file isn't there.</exception>
    public static void DemandFile(StorageOptions options)
    {
        if (options.Engine is StorageEngine.Sqlite && !File.Exists(SqliteFile(options)))
            throw new InvalidOperationException($"There is no database {SqliteFile(options)}. Say where it is with LABVOLATILITY_DATA or LABVOLATILITY_CONNECTION.");
    }

    private static string SqliteFile(StorageOptions options) => new SqliteConnectionStringBuilder(options.Connection).DataSource;
}
