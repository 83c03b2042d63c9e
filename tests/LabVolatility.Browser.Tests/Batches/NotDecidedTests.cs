using LabVolatility.Browser.Tests.Harness;
using LabVolatility.Browser.Tests.Samples;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace LabVolatility.Browser.Tests.Batches;

/// <summary>Guarded acceptance: so near to the limit that the measurement can't tell.</summary>
public sealed class NotDecidedTests(Stage stage)
{
    // 0.965 · 96.8 − 3.78 = 89.632 kPa beside the maximum of 90.0 kPa: nearer than 95 % confidence allows.
    private const decimal NearTheMaximum = 96.8m;

    [Fact]
    public async Task Hold_WithItsReason_IsSigned()
    {
        using var prepared = await Prepared.WithDuplicateAsync(stage);
        await prepared.MeasureAsync(NearTheMaximum, "i.fenwick");
        await prepared.MeasureAsync(NearTheMaximum, "i.fenwick", bottle: 2);

        await stage.VisitAsync(Screen.Desk, DemoPerson.ShiftChemist, async visit =>
        {
            var glance = visit.Page.Locator("#glance");
            var dialog = await Signing.AskAsync(visit, prepared.Batch, "hold");
            await ExpectNoReleaseAsync(visit.Page);
            await Signing.SignAsync(dialog, $"Hold batch {prepared.Batch}", Signing.ShiftChemistsPassword);
            await Expect(dialog).ToContainTextAsync("Give the reason first");
            await dialog.GetByLabel("Reason for the hold").FillAsync("two more bottles are asked for");
            await Signing.SignAsync(dialog, $"Hold batch {prepared.Batch}", Signing.ShiftChemistsPassword);

            await Expect(glance).ToContainTextAsync("on hold");
            await Expect(glance).ToContainTextAsync("Tessa Marlowe");
            await Expect(glance).ToContainTextAsync("two more bottles are asked for");
            await Expect(visit.Page.Locator("#decide-hold")).ToHaveCountAsync(0);
            await Expect(visit.Page.Locator("table[aria-labelledby=certificates]")).ToHaveCountAsync(0);
        });
    }

    private static async Task ExpectNoReleaseAsync(IPage page)
    {
        await Expect(page.Locator("#glance")).ToContainTextAsync("not decided");
        await Expect(page.Locator("#against")).ToContainTextAsync("The batch is not decided: it can't be released.");
        await Expect(page.Locator("#decide-hold")).ToBeVisibleAsync();
        await Expect(page.Locator("#decide-release")).ToHaveCountAsync(0);
    }
}
