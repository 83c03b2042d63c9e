using LabVolatility.Laboratory.Demo;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Web.Setup;

namespace LabVolatility.Web.Tests.Setup;

/// <summary>The accounts of the demo without its sixty days of work.</summary>
internal sealed class DemoPeopleAlone(WebSettings settings, MakeSettings makeSettings, MakeDemoPeople makePeople) : IStartupWork
{
    public string What => "The people of the demo are being entered";

    public async Task RunAsync(IProgress<StartupProgress> progress, CancellationToken cancellationToken)
    {
        await makeSettings.Run(settings.Demo, cancellationToken);
        await makePeople.Run(cancellationToken);
    }
}
