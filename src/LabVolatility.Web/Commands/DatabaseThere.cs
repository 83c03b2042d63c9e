using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;

namespace LabVolatility.Web.Commands;

/// <summary>Commands that read demand a laboratory; they never make an empty one and call it fine.</summary>
internal static class DatabaseThere
{
    public static async Task DemandAsync(IServiceProvider services, StorageOptions options)
    {
        DatabaseCopy.DemandFile(options);
        if (await services.GetRequiredService<ReadSettings>().Run() is null)
            throw new CommandRefusedException("The database holds no laboratory yet; start the application once.");
    }
}
