namespace LabVolatility.Web.Setup;

/// <summary>Work between the first answer of the server and the moment it is ready, such as making the demo laboratory.</summary>
public interface IStartupWork
{
    /// <summary>What is being done, for people who wait: "The demo laboratory is being made".</summary>
    string What { get; }

    Task RunAsync(IProgress<StartupProgress> progress, CancellationToken cancellationToken);
}
