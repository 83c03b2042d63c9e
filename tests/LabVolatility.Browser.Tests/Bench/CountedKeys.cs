using Microsoft.Playwright;

namespace LabVolatility.Browser.Tests.Bench;

/// <summary>A keyboard and a scanner whose strokes are counted: a scan is one, however many keys it types.</summary>
internal sealed class CountedKeys(IPage page)
{
    public int Keys { get; private set; }

    public int Scans { get; private set; }

    public async Task PressAsync(string key)
    {
        Keys++;
        await page.Keyboard.PressAsync(key);
    }

    public async Task TypeAsync(string text)
    {
        Keys += text.Length;
        await page.Keyboard.TypeAsync(text);
    }

    public async Task ScanAsync(string label)
    {
        Scans++;
        await ByKeyboard.ScanAsync(page, label);
    }

    /// <summary>A field with the focus: its text, and on.</summary>
    public async Task FieldAsync(string id, string text)
    {
        await ByKeyboard.FocusedAsync(page, id);
        await TypeAsync(text);
        await PressAsync("Enter");
    }

    /// <summary>A group of choices with the focus: the first that is offered, and on.</summary>
    public async Task FirstChoiceAsync(string name)
    {
        await ByKeyboard.FocusedOnChoiceAsync(page, name);
        await PressAsync("Enter");
    }

    /// <summary>Confirms one step after the other while the focus is on one.</summary>
    public async Task ConfirmStepsAsync()
    {
        while (await page.EvaluateAsync<bool>("document.activeElement.type === 'checkbox'"))
        {
            var step = await page.EvaluateAsync<string>("document.activeElement.id");
            await PressAsync("Space");
            await PressAsync("Enter");
            await page.WaitForFunctionAsync("id => document.activeElement.id !== id", step);
        }
    }
}
