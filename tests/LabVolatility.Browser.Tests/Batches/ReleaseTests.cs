using LabVolatility.Browser.Tests.Harness;
using LabVolatility.Browser.Tests.Samples;
using Microsoft.Playwright;
using UglyToad.PdfPig;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace LabVolatility.Browser.Tests.Batches;

/// <summary>The shift chemist at night: evidence, signature, certificate.</summary>
public sealed class ReleaseTests(Stage stage)
{
    // The demo's sign-in page lists them; they are no secret.
    private const string ShiftChemistsPassword = "night-train-to-harbour";
    private const string OnCallsPassword = "lantern-above-quay-six";

    [Fact]
    public async Task Release_Signed_GivesACertificateThatCanBeChecked()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await prepared.MeasureAsync(80.0m, "i.fenwick");
        string? code = null;

        await stage.VisitAsync(Screen.Desk, DemoPerson.ShiftChemist, async visit =>
        {
            var page = visit.Page;
            await visit.OpenAsync($"/batches/{prepared.Batch}");
            await page.Locator("#decide-release").ClickAsync();
            var dialog = page.GetByRole(AriaRole.Dialog);
            await Expect(dialog).ToContainTextAsync("release it for the destinations named");
            await SignAsync(dialog, $"Release batch {prepared.Batch}", "not-my-password-at-all");
            await Expect(dialog).ToContainTextAsync("Nothing was signed");
            await SignAsync(dialog, $"Release batch {prepared.Batch}", ShiftChemistsPassword);
            var row = page.Locator("table[aria-labelledby=certificates] tbody tr");
            await Expect(row).ToContainTextAsync("in force");
            code = await row.Locator("code").InnerTextAsync();

            var address = await row.Locator("a").First.GetAttributeAsync("href");
            var answer = await page.Context.APIRequest.GetAsync(address!);
            Assert.Equal("application/pdf", answer.Headers["content-type"]);
            using var pdf = PdfDocument.Open(await answer.BodyAsync());
            var text = string.Concat(pdf.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text + " "));
            Assert.All(
                [prepared.Batch, prepared.Sample, "73.4", "EN 13016-1:2024", "60.0", "90.0", "conforms", "Tessa Marlowe", code],
                expected => Assert.Contains(expected, text, StringComparison.Ordinal));
        });

        await stage.VisitAsync(Screen.Desk, async visit =>
        {
            await visit.OpenStaticAsync($"certificates/check/{code}");

            await Expect(visit.Page.Locator("main")).ToContainTextAsync(prepared.Batch);
            await Expect(visit.Page.Locator("main")).ToContainTextAsync("released");
        });
    }

    [Fact]
    public async Task Release_OfOnesOwnMeasurement_IsNotOffered()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await prepared.MeasureAsync(80.0m, "t.marlowe");

        await stage.VisitAsync(Screen.Desk, DemoPerson.ShiftChemist, async visit =>
        {
            await visit.OpenAsync($"/batches/{prepared.Batch}");

            await Expect(visit.Page.Locator("#against")).ToContainTextAsync("You measured or amended a result of this batch");
            await Expect(visit.Page.Locator("#decide-release")).ToHaveCountAsync(0);
        });
    }

    [Fact]
    public async Task Release_ByTwoAtOnce_TellsTheSecondWhoWasFirst()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await prepared.MeasureAsync(80.0m, "o.brandt");

        await stage.VisitAsync(Screen.Desk, DemoPerson.ShiftChemist, async second =>
        {
            await second.OpenAsync($"/batches/{prepared.Batch}");
            await second.Page.Locator("#decide-release").ClickAsync();
            await stage.VisitAsync(Screen.Desk, DemoPerson.OnCall, first => ReleaseAsync(first, prepared.Batch, OnCallsPassword));
            await SignAsync(second.Page.GetByRole(AriaRole.Dialog), $"Release batch {prepared.Batch}", ShiftChemistsPassword);

            await Expect(second.Page.GetByText("Kola Adeyemi was first").First).ToBeVisibleAsync();
        });
    }

    [Fact]
    public async Task Amendment_AfterTheRelease_MarksTheDecisionForReview()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await prepared.MeasureAsync(80.0m, "i.fenwick");
        await stage.VisitAsync(Screen.Desk, DemoPerson.OnCall, visit => ReleaseAsync(visit, prepared.Batch, OnCallsPassword));

        await stage.VisitAsync(Screen.Desk, DemoPerson.ShiftChemist, async visit =>
        {
            var page = visit.Page;
            await visit.OpenAsync($"/samples/{prepared.Sample}");
            await page.GetByText("Amend it, or set it aside").ClickAsync();
            await page.GetByLabel("Total pressure").FillAsync("80.2");
            await page.GetByLabel("Reason", new PageGetByLabelOptions { Exact = true }).FillAsync("misread by one digit");
            await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Amend the determination" }).ClickAsync();
            await Expect(page.Locator(".revisions")).ToContainTextAsync("misread by one digit");
            await visit.OpenAsync($"/batches/{prepared.Batch}");

            await Expect(page.Locator("main")).ToContainTextAsync("misread by one digit");
            await Expect(page.Locator("main")).ToContainTextAsync("for review");
        });
    }

    [Fact]
    public async Task Decision_ForAnAnalyst_IsNotOffered()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await prepared.MeasureAsync(80.0m, "i.fenwick");

        await stage.VisitAsync(Screen.Desk, DemoPerson.OtherAnalyst, async visit =>
        {
            await visit.OpenAsync($"/batches/{prepared.Batch}");

            await Expect(visit.Page.Locator("#decision-bar button")).ToHaveCountAsync(0);
        });
    }

    private static async Task ReleaseAsync(Visit visit, string batch, string password)
    {
        await visit.OpenAsync($"/batches/{batch}");
        await visit.Page.Locator("#decide-release").ClickAsync();
        await SignAsync(visit.Page.GetByRole(AriaRole.Dialog), $"Release batch {batch}", password);
        await Expect(visit.Page.Locator("table[aria-labelledby=certificates] tbody tr")).ToContainTextAsync("in force");
    }

    private static async Task SignAsync(ILocator dialog, string act, string password)
    {
        await dialog.GetByLabel("Your password").FillAsync(password);
        await dialog.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = act, Exact = true }).ClickAsync();
    }
}
