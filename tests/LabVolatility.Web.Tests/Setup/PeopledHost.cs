using Xunit;

namespace LabVolatility.Web.Tests.Setup;

/// <summary>One host for tests that change nothing.</summary>
public sealed class PeopledHost : IAsyncLifetime
{
    public LabHost Host { get; private set; } = null!;

    public async ValueTask InitializeAsync() => Host = await LabHost.StartWithPeopleAsync();

    public ValueTask DisposeAsync() => Host.DisposeAsync();
}
