using LabVolatility.Laboratory.Demo;

namespace LabVolatility.Web.Setup;

/// <summary>Makes the demo laboratory while people who wait see how far it is.</summary>
public sealed class DemoStartup(DemoLaboratory demo) : IStartupWork
{
    public string What => "The demo laboratory is being made";

    public Task RunAsync(IProgress<StartupProgress> progress, CancellationToken cancellationToken) =>
        demo.MakeAsync(new Steps(progress), cancellationToken);

    private sealed class Steps(IProgress<StartupProgress> progress) : IProgress<(int Done, int Of)>
    {
        public void Report((int Done, int Of) value) => progress.Report(new StartupProgress(value.Done, value.Of));
    }
}
