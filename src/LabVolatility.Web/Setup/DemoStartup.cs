using LabVolatility.Laboratory.Demo;

namespace LabVolatility.Web.Setup;

/// <summary>Opens the demo's accounts; the demo's samples and batches are work of their own after it.</summary>
public sealed class DemoStartup(MakeDemoPeople people) : IStartupWork
{
    public string What => "The people of the demo laboratory are being entered";

    public Task RunAsync(IProgress<StartupProgress> progress, CancellationToken cancellationToken) => people.Run(cancellationToken);
}
