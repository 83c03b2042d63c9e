namespace LabVolatility.Web.Commands;

/// <summary>What the executable does besides serving the laboratory: one command, its answer on standard output, an exit code.</summary>
public static class CommandLine
{
    public const int Failed = 1;
    public const int Misused = 2;

    private const string Known = """
        Commands:
          verify [--json]             hold this program against published values
          replay                      work out all stored results again
          records check               check the chain of records and the rows it speaks of
          backup FILE                 copy the database while it is in use
          restore FILE                put a copy in the place of a database that isn't there
          user add NAME --role ROLE   open an account; prints its one-time password
        Without a command the laboratory is served.
        """;

    /// <returns>The exit code; null where the arguments hold no command.</returns>
    public static async Task<int?> TryRunAsync(string[] args)
    {
        if (args.Length == 0 || args[0].StartsWith('-'))
            return null;
        try
        {
            return await RunAsync(args);
        }
        catch (CommandRefusedException refused)
        {
            await Console.Error.WriteLineAsync(refused.Message);
            return Failed;
        }
    }

    private static Task<int> RunAsync(string[] args) => args switch
    {
        ["verify"] => Verify.RunAsync(Console.Out, asJson: false),
        ["verify", "--json"] => Verify.RunAsync(Console.Out, asJson: true),
        ["replay"] => ReplayResults.RunAsync(Console.Out),
        ["records", "check"] => CheckTheRecords.RunAsync(Console.Out),
        ["backup", var file] => Backup.RunAsync(Console.Out, file),
        ["restore", var file] => Restore.RunAsync(Console.Out, file),
        ["user", "add", var name, "--role", var role] => AddUser.RunAsync(Console.Out, name, role),
        _ => MisuseAsync(args),
    };

    private static async Task<int> MisuseAsync(string[] args)
    {
        await Console.Error.WriteLineAsync($"There is no command \"{string.Join(' ', args)}\".\n{Known}");
        return Misused;
    }
}
