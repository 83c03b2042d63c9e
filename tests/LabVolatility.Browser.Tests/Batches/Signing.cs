using LabVolatility.Browser.Tests.Harness;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LabVolatility.Browser.Tests.Batches;

/// <summary>Decisions as people sign them on the batch's page.</summary>
internal static class Signing
{
    // The demo's sign-in page lists them; they are no secret.
    public const string ShiftChemistsPassword = "night-train-to-harbour";
    public const string OnCallsPassword = "lantern-above-quay-six";

    /// <summary>Opens the batch and asks for a decision: its dialog.</summary>
    public static async Task<ILocator> AskAsync(Visit visit, string batch, string decision)
    {
        await visit.OpenAsync($"/batches/{batch}");
        await visit.Page.Locator($"#decide-{decision}").ClickAsync();
        return visit.Page.GetByRole(AriaRole.Dialog);
    }

    /// <summary>Types the password and presses the button that names the act.</summary>
    public static async Task SignAsync(ILocator dialog, string act, string password)
    {
        await dialog.GetByLabel("Your password").FillAsync(password);
        await dialog.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = act, Exact = true }).ClickAsync();
    }

    /// <summary>Releases the batch: the check code of the certificate that comes with it.</summary>
    public static async Task<string> ReleaseAsync(Visit visit, string batch, string password, int revision = 1)
    {
        await SignAsync(await AskAsync(visit, batch, "release"), $"Release batch {batch}", password);
        var certificate = Certificate(visit.Page, revision);
        await Expect(certificate.GetByText("in force", new LocatorGetByTextOptions { Exact = true })).ToBeVisibleAsync();
        return await certificate.Locator("code").InnerTextAsync();
    }

    public static async Task WithdrawAsync(Visit visit, string batch, string reason, string password)
    {
        var dialog = await AskAsync(visit, batch, "withdraw");
        await dialog.GetByLabel("Reason for the withdrawal").FillAsync(reason);
        await SignAsync(dialog, $"Withdraw the decision on batch {batch}", password);
        await Expect(visit.Page.Locator("#glance")).ToContainTextAsync(reason);
    }

    /// <summary>The line of a certificate on the batch's page.</summary>
    public static ILocator Certificate(IPage page, int revision) =>
        page.Locator($"table[aria-labelledby=certificates] tbody tr:has(td:nth-child(2):text-is('{revision}'))");
}
