using Microsoft.Playwright;

namespace LabVolatility.Browser.Tests.Bench;

/// <summary>What hands in gloves do at the bench: every key goes where the page itself has put the focus.</summary>
internal static class ByKeyboard
{
    /// <summary>Scans a label: its keys come in one burst, the next without waiting for the one before.</summary>
    public static Task ScanAsync(IPage page, string label) =>
        Task.WhenAll(label.Select(key => key.ToString()).Append("Enter").Select(key => page.Keyboard.PressAsync(key)));

    /// <summary>From the bottle to the last reading. Enter goes on, and on a group of choices it takes the first that is offered.</summary>
    public static async Task FillAsync(IPage page, string fill, string pressure)
    {
        await page.Locator("#bench[data-listening=yes]").WaitForAsync();
        if (!await page.EvaluateAsync<bool>("!!document.querySelector('input[name=container]:checked')"))
            await ChooseAsync(page, "container"); // a scan has not picked it
        await NextAsync(page, "field-handling-chilledTo", "0,5");
        await NextAsync(page, "field-handling-fillPercent", fill);
        await ChooseAsync(page, "air");
        await ChooseAsync(page, "haze");
        await ConfirmAsync(page);
        await ChooseAsync(page, "instrument");
        await NextAsync(page, "field-readings-totalPressure", pressure);
        await NextAsync(page, "field-readings-temperature", "37,8");
        await FocusedAsync(page, "field-readings-vaporLiquidRatio");
        await page.Keyboard.TypeAsync("4,00");
    }

    /// <summary>Waits until the page has put the focus there.</summary>
    public static async Task FocusedAsync(IPage page, string id) =>
        await page.WaitForFunctionAsync("id => document.activeElement.id === id", id);

    /// <summary>Waits until the page has put the focus on this group of choices.</summary>
    public static async Task FocusedOnChoiceAsync(IPage page, string name) =>
        await page.WaitForFunctionAsync("name => document.activeElement.name === name", name);

    private static async Task ChooseAsync(IPage page, string name)
    {
        await FocusedOnChoiceAsync(page, name);
        await page.Keyboard.PressAsync("Enter");
    }

    private static async Task NextAsync(IPage page, string id, string text)
    {
        await FocusedAsync(page, id);
        await page.Keyboard.TypeAsync(text);
        await page.Keyboard.PressAsync("Enter");
    }

    private static async Task ConfirmAsync(IPage page)
    {
        while (await page.EvaluateAsync<bool>("document.activeElement.type === 'checkbox'"))
        {
            var step = await page.EvaluateAsync<string>("document.activeElement.id");
            await page.Keyboard.PressAsync("Space");
            await page.Keyboard.PressAsync("Enter");
            await page.WaitForFunctionAsync("id => document.activeElement.id !== id", step);
        }
    }
}
