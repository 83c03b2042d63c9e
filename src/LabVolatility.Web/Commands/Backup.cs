using LabVolatility.Laboratory.Storage;

namespace LabVolatility.Web.Commands;

/// <summary>Copies the database while it is in use.</summary>
internal static class Backup
{
    public static Task<int> RunAsync(TextWriter output, string file) => CommandServices.WithAsync(async (_, options) =>
    {
        await DatabaseCopy.WriteAsync(options, file);
        await output.WriteLineAsync($"Backed up to {file}, {new FileInfo(file).Length} bytes.");
        return 0;
    });
}
