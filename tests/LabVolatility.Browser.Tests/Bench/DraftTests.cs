using LabVolatility.Browser.Tests.Harness;
using LabVolatility.Browser.Tests.Samples;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace LabVolatility.Browser.Tests.Bench;

/// <summary>What was typed and not reported yet.</summary>
public sealed class DraftTests(Stage stage)
{
    [Fact]
    public async Task Bench_Reloaded_BringsBackWhatWasTyped()
    {
        using var prepared = await Prepared.MakeAsync(stage);

        await stage.VisitAsync(Screen.Desk, DemoPerson.Analyst, async visit =>
        {
            var page = visit.Page;
            await visit.OpenAsync(prepared.BenchAddress);
            await page.Locator("#field-readings-totalPressure").FocusAsync();
            await page.Keyboard.TypeAsync("62,1");
            await Expect(page.Locator("#draft-line[data-draft-state=Saved]")).ToBeVisibleAsync();
            await page.ReloadAsync();
            await visit.InteractiveAsync();

            await Expect(page.Locator("#field-readings-totalPressure")).ToHaveValueAsync("62,1");
        });
    }

    [Fact]
    public async Task Bench_OpenedByAnother_ShowsNothingOfTheDraftButWhoKeepsIt()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await stage.VisitAsync(Screen.Desk, DemoPerson.Analyst, async visit =>
        {
            await visit.OpenAsync(prepared.BenchAddress);
            await visit.Page.Locator("#field-readings-totalPressure").FocusAsync();
            await visit.Page.Keyboard.TypeAsync("62,1");
            await Expect(visit.Page.Locator("#draft-line[data-draft-state=Saved]")).ToBeVisibleAsync();
        });

        await stage.VisitAsync(Screen.Desk, DemoPerson.OtherAnalyst, async visit =>
        {
            await visit.OpenAsync(prepared.BenchAddress);

            await Expect(visit.Page.Locator("#bench")).ToContainTextAsync("Ines Fenwick has typed into this test too");
            await Expect(visit.Page.Locator("#field-readings-totalPressure")).ToHaveValueAsync("");
        });
    }
}
