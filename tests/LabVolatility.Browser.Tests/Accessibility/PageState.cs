using LabVolatility.Browser.Tests.Harness;
using Microsoft.Playwright;

namespace LabVolatility.Browser.Tests.Accessibility;

/// <summary>Something that a page shows only after somebody did something.</summary>
/// <param name="Name">For messages and pictures.</param>
/// <param name="Person">Who does it; null: nobody has signed in.</param>
/// <param name="Address">Where; words in braces are named by the test.</param>
/// <param name="Bring">What the person does.</param>
/// <param name="Shows">What is there then.</param>
internal sealed record PageState(string Name, DemoPerson? Person, string Address, Func<IPage, Task> Bring, string Shows, bool HasCircuit = true)
{
    public static Task PressAsync(IPage page, string button) =>
        page.GetByRole(AriaRole.Main).GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = button, Exact = true }).First.ClickAsync();

    /// <summary>Opens what is folded away under these words, then presses a button in it.</summary>
    public static async Task UnfoldAndPressAsync(IPage page, string words, string button)
    {
        await page.Locator("summary").Filter(new LocatorFilterOptions { HasText = words }).First.ClickAsync();
        await PressAsync(page, button);
    }
}
