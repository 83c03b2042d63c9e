using Microsoft.Data.Sqlite;

namespace LabVolatility.Laboratory.Storage.Sqlite;

/// <summary>Copies a SQLite database page by page, in one state, while others write.</summary>
internal static class SqliteCopy
{
    /// <exception cref="InvalidOperationException">It can't be copied; the message says why.</exception>
    public static async Task CopyAsync(string from, string to)
    {
        var half = to + ".part";
        try
        {
            await using (var source = Open(from, SqliteOpenMode.ReadOnly))
            await using (var target = Open(half, SqliteOpenMode.ReadWriteCreate))
            {
                await source.OpenAsync();
                await target.OpenAsync();
                source.BackupDatabase(target);
                await CheckAsync(target);
            }

            File.Move(half, to);
        }
        catch (SqliteException fault)
        {
            throw new InvalidOperationException($"{from} can't be copied: {fault.Message}", fault);
        }
        finally
        {
            File.Delete(half);
        }
    }

    private static async Task CheckAsync(SqliteConnection copy)
    {
        await using var command = copy.CreateCommand();
        command.CommandText = "PRAGMA integrity_check";
        if (await command.ExecuteScalarAsync() is not "ok")
            throw new InvalidOperationException("The copy is damaged; it was thrown away.");
    }

    private static SqliteConnection Open(string file, SqliteOpenMode mode) =>
        new(new SqliteConnectionStringBuilder { DataSource = file, Mode = mode, Pooling = false }.ToString());
}
