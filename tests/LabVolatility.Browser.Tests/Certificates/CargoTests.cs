using LabVolatility.Browser.Tests.Batches;
using LabVolatility.Browser.Tests.Harness;
using LabVolatility.Browser.Tests.Samples;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace LabVolatility.Browser.Tests.Certificates;

/// <summary>The certificate of a cargo, from the batch's page to the recipient and to its revision.</summary>
public sealed class CargoTests(Stage stage)
{
    [Fact]
    public async Task Cargo_IssuedCheckedRevised_IsToldApart()
    {
        using var first = await Prepared.MakeAsync(stage);
        using var second = await Prepared.MakeAsync(stage);
        foreach (var prepared in (Prepared[])[first, second])
            await prepared.MeasureAsync(80.0m, "i.fenwick");
        var (code, revised) = ("", "");

        await stage.VisitAsync(Screen.Desk, DemoPerson.ShiftChemist, async visit =>
        {
            var page = visit.Page;
            foreach (var prepared in (Prepared[])[second, first])
                await Signing.ReleaseAsync(visit, prepared.Batch, Signing.ShiftChemistsPassword);
            await page.Locator("#cargo").ClickAsync();
            await page.WaitForURLAsync("**/batches/cargo/new?batch=*");
            await visit.InteractiveAsync();
            await visit.UsableAsync();
            await page.Locator("#sign-cargo").ClickAsync();
            await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync(["Name the ship."]);
            await Expect(page.Locator("#field-ship-problem")).ToBeVisibleAsync();
            await visit.PictureAsync("cargo-form-problems");

            await page.GetByLabel("Ship", new PageGetByLabelOptions { Exact = true }).FillAsync("MT Ternen");
            await page.GetByLabel("Voyage or reference").FillAsync("26-17");
            await page.GetByLabel("Port", new PageGetByLabelOptions { Exact = true }).FillAsync("Skarnes");
            await page.GetByLabel("Product, as the papers").FillAsync("Gasoline 95");
            await page.Locator("#field-tanks-0-tank").SelectOptionAsync(new SelectOptionValue { Index = 1 });
            await Expect(page.Locator("#tank-rows")).ToContainTextAsync("DVPE 73.4 kPa");
            await SignAsync(page, "Issue the cargo certificate");

            await page.WaitForURLAsync("**/batches/cargo/C*");
            await visit.InteractiveAsync();
            await visit.UsableAsync();
            await visit.PictureAsync("cargo");
            code = await page.Locator("code").First.InnerTextAsync();
            var text = await CertificateText.ReadAsync(page, await page.Locator("#paper").GetAttributeAsync("href"));
            Assert.All(
                ["MT Ternen", "26-17", "Skarnes", first.Batch, first.Sample, "DVPE 73.4 kPa", "No mean over the tanks is formed", "Tessa Marlowe", code],
                words => Assert.Contains(words, text, StringComparison.Ordinal));
        });
        await CertificateCheck.ExpectAsync(stage, code, first.Batch, "genuine and in force");

        await stage.VisitAsync(Screen.Desk, DemoPerson.ShiftChemist, async visit =>
        {
            var page = visit.Page;
            await visit.OpenAsync("/batches/cargo?find=" + first.Batch);
            await page.Locator("#cargoes a").First.ClickAsync();
            await page.Locator("#revise").ClickAsync();
            await page.WaitForURLAsync("**/batches/cargo/new?replaces=*");
            await visit.InteractiveAsync();
            await Expect(page.GetByLabel("Ship", new PageGetByLabelOptions { Exact = true })).ToHaveValueAsync("MT Ternen");
            await page.Locator("#add-tank").ClickAsync();
            await page.Locator("#field-tanks-1-batch").SelectOptionAsync(second.Batch);
            await page.Locator("#field-tanks-1-tank").SelectOptionAsync(new SelectOptionValue { Index = 2 });
            await page.GetByLabel("is replaced").FillAsync("a second shore tank was loaded");
            await page.Locator("#sign-cargo").ClickAsync();
            var dialog = page.GetByRole(AriaRole.Dialog);
            await dialog.GetByLabel("Your password").FillAsync(Signing.ShiftChemistsPassword);
            await dialog.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Issue revision 2" }).ClickAsync();

            await page.WaitForURLAsync("**/batches/cargo/C*");
            await visit.InteractiveAsync();
            await Expect(page.Locator("main")).ToContainTextAsync("a second shore tank was loaded");
            revised = await page.Locator("code").First.InnerTextAsync();
        });
        await CertificateCheck.ExpectAsync(stage, code, first.Batch, "superseded or no longer in force");
        await CertificateCheck.ExpectAsync(stage, revised, $"{first.Batch}, {second.Batch}", "genuine and in force");

        await stage.VisitAsync(Screen.Desk, DemoPerson.OnCall, async visit =>
        {
            await Signing.WithdrawAsync(visit, second.Batch, "the tank took a receipt", Signing.OnCallsPassword);
            await visit.OpenAsync("/batches/cargo?find=" + second.Batch);
            await Expect(visit.Page.Locator("#cargoes")).ToContainTextAsync($"batch {second.Batch} has its release withdrawn");
            await visit.PictureAsync("cargo-list");
        });
        await CertificateCheck.ExpectAsync(stage, revised, second.Batch, "superseded or no longer in force");
    }

    private static async Task SignAsync(IPage page, string act)
    {
        await page.Locator("#sign-cargo").ClickAsync();
        await Signing.SignAsync(page.GetByRole(AriaRole.Dialog), act, Signing.ShiftChemistsPassword);
    }
}
