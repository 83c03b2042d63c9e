using System.Text.RegularExpressions;
using LabVolatility.Browser.Tests.Harness;
using LabVolatility.Browser.Tests.Samples;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace LabVolatility.Browser.Tests.Bench;

/// <summary>A scanner types wherever the cursor stands: its label is never a reading.</summary>
public sealed class ScanTests(Stage stage)
{
    private const string Pressure = "#field-readings-totalPressure";

    [Fact]
    public async Task Scan_OfABottleInAReading_PicksTheBottleAndLeavesTheReading()
    {
        using var prepared = await Prepared.MakeAsync(stage);

        await stage.VisitAsync(Screen.Desk, DemoPerson.Analyst, async visit =>
        {
            var page = visit.Page;
            await OpenAsync(visit, prepared);
            await page.Locator(Pressure).FocusAsync();
            await page.Keyboard.TypeAsync("62,1");
            await Expect(page.Locator("#draft-line[data-draft-state=Saved]")).ToBeVisibleAsync();
            await ByKeyboard.ScanAsync(page, prepared.Labels[1]);

            await Expect(page.Locator("input[name=container][data-number='2']")).ToBeCheckedAsync();
            await Expect(page.Locator(Pressure)).ToHaveValueAsync("62,1");
            await Expect(page.Locator(".bench-outcome")).ToContainTextAsync("DVPE");
        });
    }

    [Fact]
    public async Task Scan_OfAnotherSampleInAReading_OpensItsTestAndLeavesNothingHere()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        using var other = await Prepared.MakeAsync(stage);

        await stage.VisitAsync(Screen.Desk, DemoPerson.Analyst, async visit =>
        {
            var page = visit.Page;
            await OpenAsync(visit, prepared);
            await page.Locator(Pressure).FocusAsync();
            await ByKeyboard.ScanAsync(page, other.Labels[0]);
            await page.WaitForURLAsync($"**{other.BenchAddress}*");
            await Expect(page.Locator("input[name=container][data-number='1']")).ToBeCheckedAsync();
            await ByKeyboard.FillAsync(page, "75", "80,0");
            await Expect(page.Locator(".bench-outcome")).ToContainTextAsync("73.4");

            await OpenAsync(visit, prepared);
            await page.Locator("#field-readings-temperature").FocusAsync();
            await page.Keyboard.TypeAsync("37,8");
            await Expect(page.Locator("#field-readings-temperature-says")).ToContainTextAsync("37.8 °C");
            await Expect(page).ToHaveURLAsync(new Regex(Regex.Escape(prepared.BenchAddress)));
            await Expect(page.Locator(Pressure)).ToHaveValueAsync("");
        });
    }

    [Fact]
    public async Task SampleNumber_PastedIntoAReading_IsRefusedThere()
    {
        using var prepared = await Prepared.MakeAsync(stage);

        await stage.VisitAsync(Screen.Desk, DemoPerson.Analyst, async visit =>
        {
            var page = visit.Page;
            await OpenAsync(visit, prepared);
            await page.Locator(Pressure).FocusAsync();
            await page.Keyboard.InsertTextAsync(prepared.Sample);
            await page.Keyboard.PressAsync("Tab");

            await Expect(page.Locator($"{Pressure}-says")).ToContainTextAsync("a label, not a reading");
            await Expect(page.Locator(Pressure)).ToHaveValueAsync("");
            await Expect(page.Locator(".bench-outcome")).Not.ToContainTextAsync("DVPE");
        });
    }

    [Fact]
    public async Task Scan_Misread_SaysSoAndOpensNothing()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        var misread = prepared.Sample[..^1] + (prepared.Sample[^1] == '0' ? '1' : '0');

        await stage.VisitAsync(Screen.Desk, DemoPerson.Analyst, async visit =>
        {
            await visit.OpenAsync("/bench");
            await visit.Page.Locator("#scan[data-listening=yes]").WaitForAsync();
            await ByKeyboard.ScanAsync(visit.Page, misread);

            await Expect(visit.Page.GetByRole(AriaRole.Alert).Filter(new LocatorFilterOptions { HasText = "misread" })).ToBeVisibleAsync();
            await Expect(visit.Page).ToHaveURLAsync(new Regex("/bench$"));
        });
    }

    private static async Task OpenAsync(Visit visit, Prepared prepared)
    {
        await visit.OpenAsync(prepared.BenchAddress);
        await visit.Page.Locator("#bench[data-listening=yes]").WaitForAsync();
        await visit.Page.Locator("#scan[data-listening=yes]").WaitForAsync();
    }
}
