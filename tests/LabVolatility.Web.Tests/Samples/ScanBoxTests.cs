using Bunit;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Samples;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.JSInterop;
using Xunit;

namespace LabVolatility.Web.Tests.Samples;

public sealed class ScanBoxTests : BunitContext
{
    [Fact]
    public async Task ScanBox_LeftBeforeItsScriptCame_ListensToNothing()
    {
        var browser = new SlowBrowser();
        Services.AddSingleton<IJSRuntime>(browser);
        Services.AddSingleton(new ReadScan(() => throw new InvalidOperationException("Nothing was scanned."), TimeProvider.System));
        SetRendererInfo(new RendererInfo("Server", isInteractive: true));
        Render<ScanBox>();

        await DisposeComponentsAsync();
        browser.Script.SetResult(browser);
        await browser.GivenBack.Task.WaitAsync(TimeSpan.FromSeconds(10), Xunit.TestContext.Current.CancellationToken);

        Assert.Equal(["import"], browser.Asked);
    }

    /// <summary>A browser whose script is on its way; it is the script, too.</summary>
    private sealed class SlowBrowser : IJSRuntime, IJSObjectReference
    {
        public TaskCompletionSource<IJSObjectReference> Script { get; } = new();

        public TaskCompletionSource GivenBack { get; } = new();

        public List<string> Asked { get; } = [];

        public async ValueTask<TValue> InvokeAsync<TValue>(string identifier, object?[]? args)
        {
            Asked.Add(identifier);
            return identifier == "import" ? (TValue)await Script.Task : default!;
        }

        public ValueTask<TValue> InvokeAsync<TValue>(string identifier, CancellationToken cancellationToken, object?[]? args) =>
            InvokeAsync<TValue>(identifier, args);

        public ValueTask DisposeAsync()
        {
            GivenBack.TrySetResult();
            return ValueTask.CompletedTask;
        }
    }
}
