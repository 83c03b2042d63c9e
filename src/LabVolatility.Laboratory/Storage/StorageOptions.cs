using Microsoft.Data.Sqlite;

namespace LabVolatility.Laboratory.Storage;

/// <summary>Which database the laboratory keeps its records in.</summary>
/// <param name="Engine">SQLite by default.</param>
/// <param name="Connection">How the program connects.</param>
/// <param name="MigrationConnection">How an owner of the tables connects; null where the program's role owns them.</param>
/// <param name="DataFolder">Folder of the SQLite file, of watched imports and of backups.</param>
public sealed record StorageOptions(StorageEngine Engine, string Connection, string? MigrationConnection, string DataFolder)
{
    private const string FileName = "labvolatility.db";

    /// <summary>Reads the LABVOLATILITY_ settings.</summary>
    /// <exception cref="InvalidOperationException">A setting is wrong or missing; the message says which.</exception>
    public static StorageOptions From(Func<string, string?> setting)
    {
        var folder = Given("LABVOLATILITY_DATA") ?? "./data";
        var connection = Given("LABVOLATILITY_CONNECTION");
        var owner = Given("LABVOLATILITY_MIGRATION_CONNECTION");
        return Given("LABVOLATILITY_DATABASE")?.ToLowerInvariant() switch
        {
            null or "sqlite" => new(StorageEngine.Sqlite, connection ?? InFolder(folder), null, folder),
            "postgres" => new(StorageEngine.Postgres,
                connection ?? throw new InvalidOperationException("LABVOLATILITY_CONNECTION is due with LABVOLATILITY_DATABASE=postgres."), owner, folder),
            var other => throw new InvalidOperationException($"LABVOLATILITY_DATABASE is sqlite or postgres, not {other}."),
        };

        string? Given(string name) => setting(name) is { } value && !string.IsNullOrWhiteSpace(value) ? value.Trim() : null;
    }

    private static string InFolder(string folder) =>
        new SqliteConnectionStringBuilder { DataSource = Path.Combine(folder, FileName) }.ToString();
}
