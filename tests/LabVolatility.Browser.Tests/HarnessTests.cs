using LabVolatility.Browser.Tests.Harness;
using Xunit;
using Xunit.Sdk;

namespace LabVolatility.Browser.Tests;

/// <summary>The harness itself has to notice: a watch that never barks proves nothing.</summary>
public sealed class HarnessTests(Stage stage)
{
    [Fact]
    public async Task Visit_RequestToAnotherHost_Fails()
    {
        var failure = await Assert.ThrowsAnyAsync<XunitException>(() => stage.VisitAsync(Screen.Desk, async visit =>
        {
            await visit.Page.SetContentAsync("<img alt='' src='http://elsewhere.invalid/dot.png'>");
        }));

        Assert.Contains("A request left the host: http://elsewhere.invalid/dot.png", failure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Visit_ErrorOnConsole_Fails()
    {
        var failure = await Assert.ThrowsAnyAsync<XunitException>(() => stage.VisitAsync(Screen.Desk, async visit =>
        {
            await visit.Page.EvaluateAsync("console.error('the kettle is cold')");
        }));

        Assert.Contains("the kettle is cold", failure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Visit_ExpectedError_Passes() =>
        await stage.VisitAsync(Screen.Desk, async visit =>
        {
            visit.Complaints.Expect("the kettle is cold");

            await visit.Page.EvaluateAsync("console.error('the kettle is cold')");
        });

    [Fact]
    public async Task Scan_FieldWithoutLabel_FailsAndNamesIt() =>
        await stage.VisitAsync(Screen.Desk, async visit =>
        {
            await visit.Page.SetContentAsync("<html lang='en'><title>Bench</title><main><h1>Bench</h1><input id='reading'></main></html>");

            var failure = await Assert.ThrowsAnyAsync<XunitException>(visit.UsableAsync);

            Assert.Contains("#reading", failure.Message, StringComparison.Ordinal);
        });

    [Fact]
    public async Task Scan_TargetTooSmall_FailsAndNamesTheRule() =>
        await stage.VisitAsync(Screen.Tablet, async visit =>
        {
            await visit.Page.SetContentAsync("""
                <html lang='en'><title>Bench</title><main><h1>Bench</h1>
                <button style='width:8px;height:8px;padding:0' aria-label='more'></button><button style='width:8px;height:8px;padding:0' aria-label='less'></button>
                </main></html>
                """);

            var failure = await Assert.ThrowsAnyAsync<XunitException>(visit.UsableAsync);

            Assert.Contains("target-size", failure.Message, StringComparison.Ordinal);
        });
}
