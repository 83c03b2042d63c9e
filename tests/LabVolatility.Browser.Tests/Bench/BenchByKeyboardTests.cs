using LabVolatility.Browser.Tests.Harness;
using LabVolatility.Browser.Tests.Samples;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace LabVolatility.Browser.Tests.Bench;

/// <summary>The analyst at the bench, in gloves: nothing here touches a mouse.</summary>
public sealed class BenchByKeyboardTests(Stage stage)
{
    // Worked by hand (EN 13016-1, calculation of DVPE): 0.965 · 80.0 − 3.78 = 73.42 kPa;
    // 11.6 psi are 79.979 kPa, and 0.965 · 79.979 − 3.78 = 73.40 kPa.
    private const string Reported = "73.4";

    [Fact]
    public async Task Bench_ByKeyboardAlone_ReportsTheDeterminationAndItsDuplicate()
    {
        using var prepared = await Prepared.WithDuplicateAsync(stage);

        await stage.VisitAsync(Screen.Desk, DemoPerson.Analyst, async visit =>
        {
            var (page, keys) = (visit.Page, visit.Page.Keyboard);
            await visit.OpenAsync("/bench");
            await page.Locator("#scan[data-listening=yes]").WaitForAsync();
            await ByKeyboard.ScanAsync(page, prepared.Sample);
            await page.WaitForURLAsync($"**{prepared.BenchAddress}*");
            await ByKeyboard.FillAsync(page, "75", "80,0");
            await Expect(page.Locator(".bench-outcome")).ToContainTextAsync(Reported);
            await keys.PressAsync("Tab"); // ASVP as read
            await keys.PressAsync("Tab"); // DVPE
            await keys.PressAsync("Enter");
            await Expect(page.Locator(".trail-sheet")).ToContainTextAsync("0.965");
            await keys.PressAsync("Escape");
            await Expect(page.Locator(".trail-sheet")).ToHaveCountAsync(0);
            await keys.PressAsync("Control+Enter");
            await Expect(page.Locator("#reported")).ToContainTextAsync(Reported);
            await Expect(page.Locator("#reported")).ToContainTextAsync("the duplicate is due");

            await ByKeyboard.FocusedAsync(page, "again");
            await keys.PressAsync("Enter");
            await ByKeyboard.FillAsync(page, "78", "11,6 psi");
            await Expect(page.Locator("#field-readings-totalPressure-says")).ToContainTextAsync("11.6 psi");
            await keys.PressAsync("Control+Enter");

            await Expect(page.Locator("#reported")).ToContainTextAsync("2 of 2 made");
            await Expect(page.Locator("#made tbody tr")).ToHaveCountAsync(2);
            await Expect(page.Locator("#made tbody tr").Nth(0)).ToContainTextAsync($"DVPE {Reported} kPa");
            await Expect(page.Locator("#made tbody tr").Nth(1)).ToContainTextAsync($"DVPE {Reported} kPa");
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
            await ByKeyboard.FillAsync(page, "65", "80.0");
            await Expect(page.Locator(".bench-outcome")).ToContainTextAsync("65 % full");
            await page.Keyboard.PressAsync("Control+Enter");
            await Expect(page.Locator(".summary")).ToContainTextAsync("65 % full");
            await Expect(page.Locator("#reported")).ToHaveCountAsync(0);
            await Expect(page.Locator("#field-readings-totalPressure")).ToHaveValueAsync("80.0");

            await visit.OpenAsync($"/samples/{prepared.Sample}");

            await Expect(page.Locator("main")).ToContainTextAsync("0 of 1 made");
            await Expect(page.Locator(".determination")).ToHaveCountAsync(0);
        });
    }
}
