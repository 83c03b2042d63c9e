using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using Npgsql;

namespace LabVolatility.Laboratory.Storage.Postgres;

/// <summary>Copies a PostgreSQL database with the engine's own programs, pg_dump and pg_restore.</summary>
internal static class PostgresCopy
{
    public static Task WriteAsync(string connection, string file) =>
        RunAsync("pg_dump", connection, "--format=custom", "--no-owner", $"--file={file}");

    public static async Task ReadAsync(string file, string connection)
    {
        await DemandEmptyAsync(connection);
        await RunAsync("pg_restore", connection, "--no-owner", "--exit-on-error", "--single-transaction", file);
    }

    private static async Task DemandEmptyAsync(string connection)
    {
        await using var database = new NpgsqlConnection(connection);
        await database.OpenAsync();
        await using var command = database.CreateCommand();
        command.CommandText = "SELECT count(*) FROM pg_tables WHERE schemaname = 'public'";
        if (await command.ExecuteScalarAsync() is not 0L)
            throw new InvalidOperationException("The database holds tables already, and records are never written over. Name an empty one.");
    }

    // The password goes by the environment: arguments are seen by everybody on the machine.
    private static async Task RunAsync(string program, string connection, params string[] arguments)
    {
        var to = new NpgsqlConnectionStringBuilder(connection);
        var start = new ProcessStartInfo(program, arguments) { RedirectStandardError = true };
        start.Environment["PGHOST"] = to.Host;
        start.Environment["PGPORT"] = to.Port.ToString(CultureInfo.InvariantCulture);
        start.Environment["PGUSER"] = to.Username;
        start.Environment["PGDATABASE"] = to.Database;
        if (to.Password is not null)
            start.Environment["PGPASSWORD"] = to.Password;
        if (program == "pg_restore")
            start.ArgumentList.Insert(0, $"--dbname={to.Database}");
        using var process = Start(start);
        var said = await process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        if (process.ExitCode != 0)
            throw new InvalidOperationException($"{program} failed: {said.Trim()}");
    }

    private static Process Start(ProcessStartInfo start)
    {
        try
        {
            return Process.Start(start)!;
        }
        catch (Win32Exception missing)
        {
            throw new InvalidOperationException($"{start.FileName} isn't here; install PostgreSQL's client programs of the server's version.", missing);
        }
    }
}
