using LabVolatility.Browser.Tests.Harness;
using LabVolatility.Browser.Tests.Samples;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace LabVolatility.Browser.Tests.Bench;

/// <summary>The analyst at the bench, in gloves: nothing here touches a mouse.</summary>
public sealed class BenchByKeyboardTests(Stage stage)
{
    // Worked by hand: 0.965 · 80.0 − 3.78 = 73.42 kPa (EN 13016-1, calculation of DVPE).
    private const string Reported = "73.4";

    [Fact]
    public async Task Bench_ByKeyboardAlone_ReportsADetermination()
    {
        using var prepared = await Prepared.MakeAsync(stage);

        await stage.VisitAsync(Screen.Desk, DemoPerson.Analyst, async visit =>
        {
            var page = visit.Page;
            await visit.OpenAsync("/bench");
            await page.Locator("#scan[data-listening=yes]").FocusAsync();
            await page.Keyboard.TypeAsync(prepared.Sample);
            await page.Keyboard.PressAsync("Enter");
            await page.WaitForURLAsync($"**{prepared.BenchAddress}*");
            await visit.InteractiveAsync();

            await FillAsync(page, "75", "80,0");
            await Expect(page.Locator(".bench-outcome")).ToContainTextAsync(Reported);
            await page.Keyboard.PressAsync("Control+Enter");

            await Expect(page.Locator("#reported")).ToContainTextAsync(Reported);
        });
    }

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
    public async Task Bench_UnderfilledBottle_IsBlockedWithTheReason()
    {
        using var prepared = await Prepared.MakeAsync(stage);

        await stage.VisitAsync(Screen.Desk, DemoPerson.Analyst, async visit =>
        {
            var page = visit.Page;
            await visit.OpenAsync(prepared.BenchAddress);
            await FillAsync(page, "65", "80.0");
            await Expect(page.Locator(".bench-outcome")).ToContainTextAsync("65 % full");
            await page.Keyboard.PressAsync("Control+Enter");

            await Expect(page.GetByRole(AriaRole.Alert).Filter(new LocatorFilterOptions { HasText = "65 % full" }).First).ToBeVisibleAsync();
            await Expect(page.Locator("#reported")).ToHaveCountAsync(0);
            await Expect(page.Locator("#field-readings-totalPressure")).ToHaveValueAsync("80.0");
        });
    }

    [Fact]
    public async Task Bench_SampleNumberInAReading_IsNoReading()
    {
        using var prepared = await Prepared.MakeAsync(stage);

        await stage.VisitAsync(Screen.Desk, DemoPerson.Analyst, async visit =>
        {
            var page = visit.Page;
            await visit.OpenAsync(prepared.BenchAddress);
            await page.Locator("#field-readings-totalPressure").FocusAsync();
            await page.Keyboard.InsertTextAsync(prepared.Sample);
            await page.Keyboard.PressAsync("Tab");

            await Expect(page.Locator(".bench-outcome")).Not.ToContainTextAsync("DVPE");
            await Expect(page.Locator("#field-readings-totalPressure")).Not.ToHaveValueAsync(prepared.Sample);
        });
    }

    // Enter goes on; on a group of choices it takes the first that is offered; the space bar confirms.
    private static async Task FillAsync(IPage page, string fill, string pressure)
    {
        var keys = page.Keyboard;
        await page.Locator("#bench[data-listening=yes]").WaitForAsync();
        await page.Locator("input[name=container]:enabled").First.FocusAsync();
        await keys.PressAsync("Enter");
        await NextAsync(page, "field-handling-chilledTo", "0,5");
        await NextAsync(page, "field-handling-fillPercent", fill);
        await ChooseAsync(page, "air");
        await ChooseAsync(page, "haze");
        while (await page.EvaluateAsync<bool>("document.activeElement.type === 'checkbox'"))
        {
            await keys.PressAsync("Space");
            var confirmed = await page.EvaluateAsync<string>("document.activeElement.id");
            await keys.PressAsync("Enter");
            await page.WaitForFunctionAsync("id => document.activeElement.id !== id", confirmed);
        }

        await ChooseAsync(page, "instrument");
        await NextAsync(page, "field-readings-totalPressure", pressure);
        await NextAsync(page, "field-readings-temperature", "37,8");
        await page.WaitForFunctionAsync("document.activeElement.id === 'field-readings-vaporLiquidRatio'");
        await keys.TypeAsync("4,00");
    }

    private static async Task ChooseAsync(IPage page, string name)
    {
        await page.WaitForFunctionAsync("name => document.activeElement.name === name", name);
        await page.Keyboard.PressAsync("Enter");
    }

    private static async Task NextAsync(IPage page, string id, string text)
    {
        await page.WaitForFunctionAsync("id => document.activeElement.id === id", id);
        await page.Keyboard.TypeAsync(text);
        await page.Keyboard.PressAsync("Enter");
    }
}
