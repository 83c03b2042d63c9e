using Microsoft.Playwright;
using Xunit;

namespace LabVolatility.Browser.Tests.Harness;

/// <summary>One person at one screen.</summary>
public sealed class Visit
{
    private readonly Screen _screen;

    internal Visit(IPage page, Screen screen, Complaints complaints) => (Page, _screen, Complaints) = (page, screen, complaints);

    public IPage Page { get; }

    /// <summary>What the browser found wrong so far; a test that provokes an error says so here.</summary>
    public Complaints Complaints { get; }

    /// <summary>Opens a static page, such as the sign-in.</summary>
    public async Task OpenStaticAsync(string path) => await Page.GotoAsync(path, new PageGotoOptions { WaitUntil = WaitUntilState.Load });

    /// <summary>Opens a page and waits until it takes input.</summary>
    public async Task OpenAsync(string path)
    {
        await OpenStaticAsync(path);
        await InteractiveAsync();
    }

    /// <summary>Waits until the page's circuit is up (what is typed earlier would be lost) and the page has read its data.</summary>
    public async Task InteractiveAsync()
    {
        await Page.Locator("[data-interactive=yes]").First.WaitForAsync(new LocatorWaitForOptions { State = WaitForSelectorState.Attached });
        await Page.GetByRole(AriaRole.Status).Filter(new LocatorFilterOptions { HasText = "Reading …" })
            .WaitForAsync(new LocatorWaitForOptions { State = WaitForSelectorState.Hidden });
    }

    /// <summary>Signs in by hand, as the demo's sign-in page offers it. Only for what is about signing in; else visit as a person.</summary>
    public async Task SignInAsync(DemoPerson person)
    {
        ArgumentNullException.ThrowIfNull(person);
        await OpenStaticAsync("sign-in");
        await Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = person.FullName }).ClickAsync();
        await Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Sign in", Exact = true }).ClickAsync();
        await InteractiveAsync();
    }

    /// <summary>
    /// What keeps this page from being usable by everybody: wider than the screen, or a serious or critical accessibility
    /// finding in the light or the dark theme.
    /// </summary>
    public async Task<IReadOnlyList<string>> FaultsAsync()
    {
        var faults = new List<string>();
        var wider = await Page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        if (wider > 0)
            faults.Add($"{Page.Url} is {wider} px wider than the {_screen} screen.");
        await ThemeAsync(ColorScheme.Dark);
        faults.AddRange(await AccessibilityScan.RunAsync(Page, AccessibilityScan.Colours, $"{Page.Url}, {_screen}, dark"));
        await ThemeAsync(ColorScheme.Light);
        faults.AddRange(await AccessibilityScan.RunAsync(Page, AccessibilityScan.Everything, $"{Page.Url}, {_screen}, light"));
        return faults;
    }

    /// <summary>The same in the theme that the page stands in: without the laboratory it can't be changed.</summary>
    public Task<IReadOnlyList<string>> FaultsAsItStandsAsync() => AccessibilityScan.RunAsync(Page, AccessibilityScan.Everything, $"{Page.Url}, {_screen}");

    /// <summary>Fails where this page has faults.</summary>
    public async Task UsableAsync()
    {
        var faults = await FaultsAsync();
        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    /// <summary>Takes a picture of the page in both themes, where pictures are asked for.</summary>
    public async Task PictureAsync(string name)
    {
        if (TestSettings.Pictures is not { } folder)
            return;

        foreach (var scheme in new[] { ColorScheme.Dark, ColorScheme.Light })
        {
            await ThemeAsync(scheme);
            await SaveAsync(Path.Combine(folder, $"{name}-{_screen}-{(scheme == ColorScheme.Dark ? "dark" : "light")}.png"));
        }
    }

    /// <summary>Keeps a small picture of what is on the screen, as another screen and theme would show it.</summary>
    internal async Task KeepAsync(string path, Screen screen, ColorScheme scheme)
    {
        await Page.SetViewportSizeAsync(screen.Width, screen.Height);
        await ThemeAsync(scheme);
        var browser = await Page.Context.NewCDPSessionAsync(Page);
        var picture = await browser.SendAsync("Page.captureScreenshot", new Dictionary<string, object> { ["format"] = "webp", ["quality"] = 82 });
        await File.WriteAllBytesAsync(path, picture!.Value.GetProperty("data").GetBytesFromBase64());
    }

    internal async Task PictureOfFailureAsync()
    {
        if (TestSettings.Pictures is { } folder && !Page.IsClosed)
            await SaveAsync(Path.Combine(folder, $"failed-{Guid.NewGuid():N}.png"));
    }

    // The theme follows the system, over the circuit: it is there once the paper has turned.
    private async Task ThemeAsync(ColorScheme scheme)
    {
        await Page.EmulateMediaAsync(new PageEmulateMediaOptions { ColorScheme = scheme });
        await Page.WaitForFunctionAsync(
            """
            dark => {
              const paper = [document.body, document.documentElement].map(e => getComputedStyle(e).backgroundColor).find(c => !c.endsWith(", 0)"));
              const light = paper ? paper.match(/[\d.]+/g).slice(0, 3).reduce((sum, part) => sum + Number(part), 0) : 765;
              return !paper || (light < 384) === dark;
            }
            """,
            scheme == ColorScheme.Dark);
    }

    private async Task SaveAsync(string path) =>
        await Page.ScreenshotAsync(new PageScreenshotOptions { Path = path, Animations = ScreenshotAnimations.Disabled });
}
