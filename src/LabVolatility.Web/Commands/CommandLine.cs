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
          healthy                     ask the laboratory that runs here whether it may be used
        Without a command the laboratory is served.
        """;

    /// <returns>The exit code; null where the arguments hold no command.</returns>
    public static Task<int?> TryRunAsync(string[] args) => TryRunAsync(args, CommandWorld.Process);

    internal static async Task<int?> TryRunAsync(string[] args, CommandWorld world)
    {
        if (args.Length == 0 || args[0].StartsWith('-'))
            return null;
        try
        {
            return await RunAsync(args, world);
        }
        catch (CommandRefusedException refused)
        {
            await world.Error.WriteLineAsync(refused.Message);
            return Failed;
        }
    }

    private static Task<int> RunAsync(string[] args, CommandWorld world) => args switch
    {
        ["verify"] => Verify.RunAsync(world, asJson: false),
        ["verify", "--json"] => Verify.RunAsync(world, asJson: true),
        ["replay"] => ReplayResults.RunAsync(world),
        ["records", "check"] => CheckTheRecords.RunAsync(world),
        ["backup", var file] => Backup.RunAsync(world, file),
        ["restore", var file] => Restore.RunAsync(world, file),
        ["user", "add", var name, "--role", var role] => AddUser.RunAsync(world, name, role),
        ["healthy"] => Healthy.RunAsync(world),
        _ => MisuseAsync(args, world),
    };

    private static async Task<int> MisuseAsync(string[] args, CommandWorld world)
    {
        await world.Error.WriteLineAsync($"There is no command \"{string.Join(' ', args)}\".\n{Known}");
        return Misused;
    }
}
