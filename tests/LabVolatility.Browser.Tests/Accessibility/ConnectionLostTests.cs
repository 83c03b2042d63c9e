using LabVolatility.Browser.Tests.Harness;
using Microsoft.Playwright;
using Xunit;

namespace LabVolatility.Browser.Tests.Accessibility;

/// <summary>A page whose laboratory does not answer any more: what it says about that is accessible too.</summary>
public sealed class ConnectionLostTests(Stage stage)
{
    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Line_Lost_IsUsable(ColorScheme scheme) =>
        await stage.VisitAsync(Screen.Tablet, DemoPerson.OnCall, async visit =>
        {
            visit.Complaints.Expect("WebSocket");
            visit.Complaints.Expect("ERR_FAILED");
            visit.Complaints.Expect("Connection disconnected");
            await visit.Page.EmulateMediaAsync(new PageEmulateMediaOptions { ColorScheme = scheme });
            IWebSocketRoute? line = null;
            await visit.Page.RouteWebSocketAsync("**/_blazor*", opened =>
            {
                line = opened;
                opened.ConnectToServer();
            });
            await visit.OpenAsync("/batches/new");
            await visit.Page.GetByLabel("Volume, m³").FillAsync("7488");

            await visit.Page.RouteWebSocketAsync("**/_blazor*", opened => opened.CloseAsync());
            await visit.Page.RouteAsync("**/*", request => request.AbortAsync());
            await line!.CloseAsync();
            await visit.Page.Locator("#line").WaitForAsync();

            Assert.Empty(await visit.FaultsAsItStandsAsync());
        });
}
