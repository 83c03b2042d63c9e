using LabVolatility.Laboratory.Storage;

namespace LabVolatility.Web.Commands;

/// <summary>Copies the database while it is in use.</summary>
internal static class Backup
{
    public static Task<int> RunAsync(CommandWorld world, string file) => CommandServices.WithAsync(world, async (_, options) =>
    {
        await DatabaseCopy.WriteAsync(options, file);
        await world.Output.WriteLineAsync($"Backed up to {file}, {new FileInfo(file).Length} bytes.");
        return 0;
    });
}
