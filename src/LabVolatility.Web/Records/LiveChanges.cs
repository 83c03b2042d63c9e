using LabVolatility.Laboratory.Storage;

namespace LabVolatility.Web.Records;

/// <summary>Hears what all nodes change, for the pages that are open at this one.</summary>
public sealed class LiveChanges(IServiceProvider services) : BackgroundService
{
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        try
        {
            await LabStorage.ListenAsync(services, stoppingToken);
        }
        catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
        {
        }
    }
}
