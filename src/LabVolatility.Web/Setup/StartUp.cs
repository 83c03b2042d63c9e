using System.Data.Common;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Web.People;

namespace LabVolatility.Web.Setup;

/// <summary>Opens the database, checks its guards, makes what is missing, while the server already answers.</summary>
public sealed class StartUp(
    IServiceProvider services, WebSettings settings, Readiness readiness, LaboratoryFacts facts,
    FirstAdministratorCode firstCode, IHostApplicationLifetime life, TimeProvider clock, ILogger<StartUp> log) : BackgroundService
{
    private static readonly TimeSpan BetweenTries = TimeSpan.FromSeconds(2);
    private static readonly TimeSpan BetweenReadings = TimeSpan.FromMinutes(1);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        try
        {
            await OpenDatabaseAsync(stoppingToken);
            await MakeWhatIsMissingAsync(stoppingToken);
            readiness.Finish();
            log.LogInformation("Ready at {Addresses}", string.Join(", ", settings.Addresses));
            await KeepFactsFreshAsync(stoppingToken);
        }
        catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
        {
        }
        catch (Exception fault)
        {
            log.LogCritical(fault, "The laboratory could not be opened: {Reason}", fault.Message);
            readiness.Begin($"The laboratory could not be opened: {fault.Message.TrimEnd('.')}");
            Environment.ExitCode = 1;
            life.StopApplication();
        }
    }

    private async Task OpenDatabaseAsync(CancellationToken stoppingToken)
    {
        while (true)
        {
            try
            {
                readiness.Begin("The database is being opened");
                await LabStorage.MigrateAsync(services, stoppingToken);
                return;
            }
            catch (DbException unreachable) when (unreachable.IsTransient)
            {
                log.LogWarning("The database can't be reached ({Reason}); trying again", unreachable.Message);
                readiness.Begin("The database can't be reached; trying again");
                await Task.Delay(BetweenTries, clock, stoppingToken);
            }
        }
    }

    private async Task MakeWhatIsMissingAsync(CancellationToken stoppingToken)
    {
        await using var scope = services.CreateAsyncScope();
        var make = scope.ServiceProvider.GetRequiredService<MakeSettings>();
        RefuseTheOtherKind(settings.Demo
            ? await scope.ServiceProvider.GetRequiredService<ReadSettings>().Run(stoppingToken)
            : await make.Run(demo: false, stoppingToken));
        foreach (var work in scope.ServiceProvider.GetServices<IStartupWork>())
        {
            readiness.Begin(work.What);
            await work.RunAsync(readiness, stoppingToken);
        }

        await make.Run(settings.Demo, stoppingToken);
        await facts.RefreshAsync(stoppingToken);
        if (!await scope.ServiceProvider.GetRequiredService<AnyPerson>().Run(stoppingToken))
            firstCode.Announce();
    }

    // A demo makes its own settings: at the beginning of the days that it plays.
    private void RefuseTheOtherKind(LaboratorySettings? made)
    {
        if (made is not null && made.IsDemo != settings.Demo)
        {
            throw new InvalidOperationException(made.IsDemo
                ? "This database holds the demo laboratory, whose passwords everybody knows: it opens in demo mode only. Give a laboratory a database of its own."
                : "This database holds a laboratory's own records: it does not open in demo mode.");
        }
    }

    // Another node may change the laboratory's name or zone.
    private async Task KeepFactsFreshAsync(CancellationToken stoppingToken)
    {
        using var timer = new PeriodicTimer(BetweenReadings, clock);
        while (await timer.WaitForNextTickAsync(stoppingToken))
        {
            try
            {
                await facts.RefreshAsync(stoppingToken);
            }
            catch (DbException away)
            {
                log.LogWarning("The settings can't be read now: {Reason}", away.Message);
            }
        }
    }
}
