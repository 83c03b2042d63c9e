using System.Net;
using System.Text.Json;
using LabVolatility.Web.Setup;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace LabVolatility.Web.Tests.Setup;

public sealed class HealthTests
{
    [Fact]
    public async Task Ready_WhileTheDemoIsMade_SaysHowFar()
    {
        var work = new HeldWork();
        await using var host = LabHost.Begin(more: services => services.AddSingleton<IStartupWork>(work));
        using var client = host.CreateClient();
        await work.Begun.Task.WaitAsync(TestContext.Current.CancellationToken);

        using var live = await client.GetAsync("/health/live", TestContext.Current.CancellationToken);
        using var ready = await client.GetAsync("/health/ready", TestContext.Current.CancellationToken);
        using var page = await client.GetAsync("/sign-in", TestContext.Current.CancellationToken);
        using var api = await client.GetAsync("/api/v1/catalogue/methods", TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.OK, live.StatusCode);
        Assert.Equal(HttpStatusCode.ServiceUnavailable, ready.StatusCode);
        var told = JsonDocument.Parse(await ready.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)).RootElement;
        Assert.Equal((3, 8), (told.GetProperty("done").GetInt32(), told.GetProperty("total").GetInt32()));
        Assert.Equal(HttpStatusCode.ServiceUnavailable, page.StatusCode);
        Assert.Contains("Held work is going on: 3 of 8.", await page.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.Equal("application/problem+json", api.Content.Headers.ContentType?.MediaType);

        work.Release.SetResult();
        await host.ReadyAsync();
        using var after = await client.GetAsync("/health/ready", TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, after.StatusCode);
    }

    private sealed class HeldWork : IStartupWork
    {
        public TaskCompletionSource Begun { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);

        public TaskCompletionSource Release { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);

        public string What => "Held work is going on";

        public async Task RunAsync(IProgress<StartupProgress> progress, CancellationToken cancellationToken)
        {
            progress.Report(new StartupProgress(3, 8));
            Begun.SetResult();
            await Release.Task.WaitAsync(cancellationToken);
        }
    }
}
