using LabVolatility.Browser.Tests.Certificates;
using LabVolatility.Browser.Tests.Harness;
using LabVolatility.Browser.Tests.Samples;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace LabVolatility.Browser.Tests.Batches;

/// <summary>The shift chemist at night: evidence, signature, certificate.</summary>
public sealed class ReleaseTests(Stage stage)
{
    [Fact]
    public async Task Release_Signed_GivesACertificateThatCanBeChecked()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await prepared.MeasureAsync(80.0m, "i.fenwick");
        var code = "";

        await stage.VisitAsync(Screen.Desk, DemoPerson.ShiftChemist, async visit =>
        {
            code = await Signing.ReleaseAsync(visit, prepared.Batch, Signing.ShiftChemistsPassword);
            await Expect(visit.Page.Locator("#glance")).ToContainTextAsync("Tessa Marlowe");
            var certificate = Signing.Certificate(visit.Page, 1).Locator("a").First;
            var number = await certificate.InnerTextAsync();

            var text = await CertificateText.ReadAsync(visit.Page, await certificate.GetAttributeAsync("href"));

            Assert.All(
                [number, prepared.Batch, prepared.Sample, "73.4", "EN 13016-1:2024", "60.0", "90.0", "conforms", "Tessa Marlowe", code],
                expected => Assert.Contains(expected, text, StringComparison.Ordinal));
        });

        await CertificateCheck.ExpectAsync(stage, code, prepared.Batch, "genuine and in force");
    }

    [Fact]
    public async Task Release_WrongPassword_IsRefusedAndKeepsTheRemark()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await prepared.MeasureAsync(80.0m, "i.fenwick");

        await stage.VisitAsync(Screen.Desk, DemoPerson.ShiftChemist, async visit =>
        {
            var dialog = await Signing.AskAsync(visit, prepared.Batch, "release");
            await Expect(dialog).ToContainTextAsync("release it for the destinations named");
            await dialog.GetByLabel("Remark").FillAsync("the ship waits");
            await Signing.SignAsync(dialog, $"Release batch {prepared.Batch}", "not-my-password-at-all");

            await Expect(dialog).ToContainTextAsync("Nothing was signed");
            await Expect(dialog.GetByLabel("Remark")).ToHaveValueAsync("the ship waits");
            await Expect(dialog.GetByLabel("Your password")).ToHaveValueAsync("");
            await dialog.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Cancel" }).ClickAsync();
            await Expect(visit.Page.Locator("#glance")).ToContainTextAsync("Nobody has decided on it yet");
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
            await Expect(visit.Page.Locator("#decide-hold")).ToBeVisibleAsync();
        });
    }

    [Fact]
    public async Task Release_WhileOnesOwnMeasurementComesIn_IsRefused()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await prepared.MeasureAsync(80.0m, "i.fenwick");

        await stage.VisitAsync(Screen.Desk, DemoPerson.ShiftChemist, async visit =>
        {
            var dialog = await Signing.AskAsync(visit, prepared.Batch, "release");
            await prepared.MeasureAsync(80.1m, "t.marlowe", bottle: 2);

            await Expect(dialog).ToContainTextAsync("Close this and look at the batch as it is now");
            await dialog.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Cancel" }).ClickAsync();
            await Expect(visit.Page.Locator("#decide-release")).ToHaveCountAsync(0);
            await Expect(visit.Page.Locator("#glance")).ToContainTextAsync("Nobody has decided on it yet");
        });
    }

    [Fact]
    public async Task Release_ByTwoAtOnce_TellsTheSecondWhoWasFirst()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await prepared.MeasureAsync(80.0m, "o.brandt");

        await stage.VisitAsync(Screen.Desk, DemoPerson.ShiftChemist, async second =>
        {
            var dialog = await Signing.AskAsync(second, prepared.Batch, "release");
            await stage.VisitAsync(Screen.Desk, DemoPerson.OnCall, first =>
                Signing.ReleaseAsync(first, prepared.Batch, Signing.OnCallsPassword));

            await Expect(dialog).ToContainTextAsync("Kola Adeyemi");
            await Expect(dialog).ToContainTextAsync("Close this and look at the batch as it is now");
            await dialog.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Cancel" }).ClickAsync();
            await Expect(second.Page.Locator("#glance")).ToContainTextAsync("Kola Adeyemi");
            await Expect(second.Page.Locator("table[aria-labelledby=certificates] tbody tr")).ToHaveCountAsync(1);
        });
    }
}
