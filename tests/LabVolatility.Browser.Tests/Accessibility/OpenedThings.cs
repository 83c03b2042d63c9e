using LabVolatility.Browser.Tests.Harness;
using Microsoft.Playwright;
using static LabVolatility.Browser.Tests.Accessibility.PageState;

namespace LabVolatility.Browser.Tests.Accessibility;

/// <summary>What lies over a page or unfolds in it: dialogs, the arithmetic of a number, what is shown once.</summary>
internal static class OpenedThings
{
    private const string Dialog = "dialog[open]";

    public static IReadOnlyList<PageState> All { get; } =
    [
        new("keys", DemoPerson.OnCall, "/bench/{waiting}/EN-13016-1", page => page.Keyboard.PressAsync("Control+/"), "dialog#keys[open]"),
        new("arithmetic", DemoPerson.OnCall, "/batches/{batch}", page => page.Locator("main .trail-open").First.ClickAsync(), ".trail-sheet"),
        // A password of somebody whose signature no other test asks for: five tries a minute are allowed.
        new("signature", DemoPerson.QualityManager, "/batches/{batch}", page => page.Locator("#decide-release").ClickAsync(), Dialog),
        new("signature refused", DemoPerson.QualityManager, "/batches/{batch}", async page =>
        {
            await page.Locator("#decide-release").ClickAsync();
            await page.GetByLabel("Your password").FillAsync("not my password at all");
            await page.GetByRole(AriaRole.Dialog).GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Release batch" }).ClickAsync();
        }, $"{Dialog} .problem:not(:empty)"),
        new("key made", DemoPerson.Administrator, "/setup/keys", page => MakeKeyAsync(page, "shown once"), ".secret"),
        new("confirmation", DemoPerson.Administrator, "/setup/keys", async page =>
        {
            await MakeKeyAsync(page, "taken back at once");
            await PressAsync(page, "Revoke taken back at once");
        }, Dialog),
    ];

    private static async Task MakeKeyAsync(IPage page, string name)
    {
        await page.GetByLabel("What it is for").FillAsync(name);
        await page.GetByLabel("Owner, who answers for it").SelectOptionAsync(new SelectOptionValue { Index = 1 });
        await page.GetByRole(AriaRole.Group, new PageGetByRoleOptions { Name = "Opens" }).GetByRole(AriaRole.Checkbox).First.CheckAsync();
        await PressAsync(page, "Make key");
    }
}
