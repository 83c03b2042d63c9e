using LabVolatility.Laboratory.Storage;

namespace LabVolatility.Web.Commands;

/// <summary>Puts a copy in the place of a database that isn't there.</summary>
internal static class Restore
{
    public static Task<int> RunAsync(CommandWorld world, string file) => CommandServices.WithAsync(world, async (_, options) =>
    {
        await DatabaseCopy.ReadAsync(file, options);
        await world.Output.WriteLineAsync($"Restored from {file}. Run \"records check\" and \"replay\" before the laboratory is used.");
        return 0;
    });
}
