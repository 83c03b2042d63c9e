using LabVolatility.Browser.Tests.Harness;
using Microsoft.Playwright;
using Xunit;

[assembly: AssemblyFixture(typeof(Stage))]

namespace LabVolatility.Browser.Tests.Harness;

/// <summary>One running application and one browser for all tests of this project.</summary>
public sealed class Stage : IAsyncLifetime
{
    private readonly SemaphoreSlim _oneSignInAtATime = new(1);
    private readonly Dictionary<string, string> _signedIn = [];
    private PublishedApplication? _application;
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    internal static string[] ChromiumArguments { get; } =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
        "--disable-component-update", "--disable-sync",
        // Any other host is unknown to the browser, so that no test depends on a network.
        "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1",
    ];

    /// <summary>Where the application answers, with a slash at the end.</summary>
    public Uri Address => Application.Address;

    private PublishedApplication Application => _application ?? throw new InvalidOperationException("The application is not running.");

    public async ValueTask InitializeAsync()
    {
        var cancellation = TestContext.Current.CancellationToken;
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = TestSettings.Chromium,
            Args = ChromiumArguments,
        });
        _application = await PublishedApplication.StartDemoAsync(cancellation);
    }

    /// <summary>
    /// Runs <paramref name="work"/> in a browser of its own (cookies, storage) before anybody signed in, then fails if a page
    /// wrote an error to its console, threw, or asked another host for something.
    /// </summary>
    public Task VisitAsync(Screen screen, Func<Visit, Task> work) => VisitAsync(Application, screen, null, work);

    /// <summary>The same, signed in as one of the demo laboratory's people.</summary>
    public async Task VisitAsync(Screen screen, DemoPerson person, Func<Visit, Task> work)
    {
        ArgumentNullException.ThrowIfNull(person);
        await VisitAsync(Application, screen, await SignedInAsync(person), work);
    }

    /// <summary>The same in another laboratory, with the cookies of somebody who signed in there.</summary>
    internal async Task VisitAsync(PublishedApplication application, Screen screen, string? storageState, Func<Visit, Task> work)
    {
        ArgumentNullException.ThrowIfNull(screen);
        ArgumentNullException.ThrowIfNull(work);
        await using var context = await _browser!.NewContextAsync(new BrowserNewContextOptions
        {
            BaseURL = application.Address.AbsoluteUri,
            IgnoreHTTPSErrors = true,
            ViewportSize = new ViewportSize { Width = screen.Width, Height = screen.Height },
            HasTouch = screen.Touch,
            ReducedMotion = ReducedMotion.Reduce,
            ColorScheme = ColorScheme.Light,
            Locale = "en-GB",
            StorageState = storageState,
        });
        var complaints = new Complaints(context, application.Address);
        var page = await context.NewPageAsync();
        var visit = new Visit(page, screen, complaints);
        try
        {
            await work(visit);
        }
        catch
        {
            await visit.PictureOfFailureAsync();
            TestContext.Current.TestOutputHelper?.WriteLine($"At {page.Url}\n{complaints}\nThe application's last lines:\n{application.Log}");
            throw;
        }

        Assert.True(complaints.None, complaints.ToString());
    }

    // Once per person: the application limits how often somebody may try a password.
    private async Task<string> SignedInAsync(DemoPerson person)
    {
        await _oneSignInAtATime.WaitAsync();
        try
        {
            if (!_signedIn.TryGetValue(person.FullName, out var state))
            {
                await VisitAsync(Screen.Desk, async visit =>
                {
                    await visit.SignInAsync(person);
                    state = await visit.Page.Context.StorageStateAsync();
                });
                _signedIn[person.FullName] = state!;
            }

            return state!;
        }
        finally
        {
            _oneSignInAtATime.Release();
        }
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
            await _browser.DisposeAsync();
        _playwright?.Dispose();
        if (_application is not null)
            await _application.DisposeAsync();
        _oneSignInAtATime.Dispose();
    }
}
