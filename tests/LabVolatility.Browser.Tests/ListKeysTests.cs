using System.Text.RegularExpressions;
using LabVolatility.Browser.Tests.Harness;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace LabVolatility.Browser.Tests;

/// <summary>Lists by keyboard: one tab stop, arrows from row to row, Enter opens, Back finds the row again.</summary>
public sealed class ListKeysTests(Stage stage)
{
    public static TheoryData<string, string> Lists => new()
    {
        { "/samples", "samples" }, { "/batches", "batches" }, { "/bench", "waiting" }, { "/instruments", "instruments" },
        { "/records", "records" }, { "/limits", "areas" },
    };

    [Theory, MemberData(nameof(Lists))]
    public async Task List_ByArrows_IsOneTabStopAndFollows(string address, string list) =>
        await stage.VisitAsync(Screen.Desk, DemoPerson.QualityManager, async visit =>
        {
            var (page, keys) = (visit.Page, visit.Page.Keyboard);
            await visit.OpenAsync(address);
            var rows = page.Locator($"#{list} > tbody > tr[tabindex]");
            await rows.First.WaitForAsync();
            Assert.Equal(1, await page.Locator($"#{list} tbody [tabindex='0']").CountAsync());
            Assert.Equal(0, await page.Locator($"#{list} tbody :is(a[href], button):not([tabindex='-1'])").CountAsync());

            await rows.First.FocusAsync();
            await keys.PressAsync("ArrowDown");
            await Expect(rows.Nth(1)).ToBeFocusedAsync();
            await keys.PressAsync("End");
            await Expect(rows.Last).ToBeFocusedAsync();
            await keys.PressAsync("ArrowDown");
            await Expect(rows.Last).ToBeFocusedAsync();
            await keys.PressAsync("PageUp");
            await Expect(rows.Last).Not.ToBeFocusedAsync();
            await keys.PressAsync("Home");
            await Expect(rows.First).ToBeFocusedAsync();
            await keys.PressAsync("ArrowRight");
            await Expect(rows.First.Locator("a, button").First).ToBeFocusedAsync();
            await keys.PressAsync("ArrowLeft");
            await Expect(rows.First).ToBeFocusedAsync();
            await keys.PressAsync("Control+/");
            await Expect(page.Locator("#keys")).ToContainTextAsync("from row to row of a list");
        });

    [Fact]
    public async Task Back_FromABatch_FindsFilterRowAndHeight() =>
        await stage.VisitAsync(Screen.Desk, DemoPerson.ShiftChemist, async visit =>
        {
            var (page, keys) = (visit.Page, visit.Page.Keyboard);
            await visit.OpenAsync("/batches");
            await page.Locator("#grade").SelectOptionAsync("G95");
            await page.WaitForURLAsync("**/batches?grade=G95");
            var rows = page.Locator("#batches > tbody > tr[tabindex]");
            await rows.First.FocusAsync();
            await keys.PressAsync("End");
            await Expect(rows.Last).ToBeFocusedAsync();
            var number = await rows.Last.Locator("a.strong").InnerTextAsync();
            var height = await page.EvaluateAsync<double>("scrollY");
            Assert.True(height > 0, "The list is too short for this test.");
            await keys.PressAsync("Enter");
            await page.WaitForURLAsync(new Regex($"/batches/{Regex.Escape(number)}$"));
            await page.GoBackAsync();

            await Expect(page.Locator("#grade")).ToHaveValueAsync("G95");
            await Expect(rows.Filter(new LocatorFilterOptions { HasText = number })).ToBeFocusedAsync();
            Assert.Equal(height, await page.EvaluateAsync<double>("scrollY"), tolerance: 2);
        });

    [Fact]
    public async Task Enter_OnARecord_OpensItsChange() =>
        await stage.VisitAsync(Screen.Desk, DemoPerson.QualityManager, async visit =>
        {
            await visit.OpenAsync("/records");
            var row = visit.Page.Locator("#records > tbody > tr[tabindex]").First;
            await row.FocusAsync();
            await visit.Page.Keyboard.PressAsync("Enter");

            await Expect(visit.Page.Locator("#records")).ToContainTextAsync("Written by");
            await Expect(row).ToBeFocusedAsync();
        });
}
