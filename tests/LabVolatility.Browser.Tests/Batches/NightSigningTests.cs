using System.Globalization;
using System.Text.RegularExpressions;
using LabVolatility.Browser.Tests.Harness;
using LabVolatility.Browser.Tests.Samples;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace LabVolatility.Browser.Tests.Batches;

/// <summary>At night: who measured calls somebody, who looks and signs on a telephone.</summary>
public sealed class NightSigningTests(Stage stage)
{
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(1);

    [Fact]
    public async Task OnCall_FromSignInToSignature_TakesLessThanAMinute()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await prepared.MeasureAsync(80.0m, "t.marlowe");

        await stage.VisitAsync(Screen.Phone, async visit =>
        {
            var (page, taps) = (visit.Page, 0);
            var began = TimeProvider.System.GetTimestamp();
            await visit.OpenStaticAsync($"/night/{prepared.Batch}");
            await TapAsync(page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = DemoPerson.OnCall.FullName }));
            await TapAsync(page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Sign in", Exact = true }));
            await visit.InteractiveAsync();
            var glance = page.Locator("#glance");
            await Expect(glance).ToContainTextAsync("conforms");
            await Expect(glance).ToContainTextAsync("Tessa Marlowe");
            await Expect(glance).ToContainTextAsync("VP-1: 2,2-dimethylbutane in band");
            await Expect(glance).ToContainTextAsync("13.4 kPa"); // 0.965 · 80.0 − 3.78 = 73.42, as compared 73.4, above the minimum of 60.0
            await TapAsync(glance.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "DVPE 73.4 kPa" }).First);
            await Expect(page.Locator(".trail-sheet")).ToContainTextAsync("0.965");
            await visit.PictureAsync("night-evidence");
            await TapAsync(page.Locator(".trail-sheet").GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Close" }));
            await TapAsync(page.Locator("#decide-release"));
            var dialog = page.GetByRole(AriaRole.Dialog);
            await Expect(dialog).ToContainTextAsync("release it for the destinations named");
            await dialog.GetByLabel("Your password").FillAsync(Signing.OnCallsPassword);
            await TapAsync(dialog.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = $"Release batch {prepared.Batch}", Exact = true }));
            await Expect(glance).ToContainTextAsync("released");
            var took = TimeProvider.System.GetElapsedTime(began);

            TestContext.Current.TestOutputHelper?.WriteLine(string.Create(CultureInfo.InvariantCulture, $"On-call signer: {taps} taps, {took.TotalSeconds:0.0} s"));
            Assert.True(took < Longest, $"It took {took}.");
            Assert.True(taps <= 6, $"It took {taps} taps.");

            async Task TapAsync(ILocator target)
            {
                await target.TapAsync();
                taps++;
            }
        });
    }

    [Theory, InlineData("phone"), InlineData("small phone")]
    public async Task Dialog_WithTheKeyboardOpen_HidesNothing(string screen)
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await prepared.MeasureAsync(80.0m, "t.marlowe");

        await stage.VisitAsync(Screen.Named(screen), DemoPerson.OnCall, async visit =>
        {
            await visit.OpenAsync($"/night/{prepared.Batch}");
            await visit.UsableAsync();
            await visit.PictureAsync("night");
            await visit.Page.Locator("#decide-release").TapAsync();
            var dialog = visit.Page.GetByRole(AriaRole.Dialog);
            await Expect(dialog).ToBeVisibleAsync();
            await visit.PictureAsync("night-dialog");

            // A keyboard takes about 300 of these pixels.
            var size = visit.Page.ViewportSize!;
            await visit.Page.SetViewportSizeAsync(size.Width, size.Height - 300);
            await dialog.GetByLabel("Your password").FocusAsync();
            var act = dialog.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = $"Release batch {prepared.Batch}", Exact = true });

            await Expect(dialog.GetByLabel("Your password")).ToBeInViewportAsync();
            await Expect(act).ToBeInViewportAsync(new LocatorAssertionsToBeInViewportOptions { Ratio = 1 });
            Assert.True((await act.BoundingBoxAsync())!.Height >= 44);
        });
    }

    [Fact]
    public async Task OwnMeasurement_AtNight_ShowsWhomToCallAndNoSignature()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await prepared.MeasureAsync(80.0m, "t.marlowe");

        await stage.VisitAsync(Screen.Phone, DemoPerson.ShiftChemist, async visit =>
        {
            await visit.OpenAsync($"/night/{prepared.Batch}");

            var call = visit.Page.Locator("#call-signer");
            await Expect(call).ToContainTextAsync("Kola Adeyemi");
            await Expect(call).Not.ToContainTextAsync("Tessa Marlowe");
            await Expect(call.Locator("#night-address")).ToContainTextAsync($"/night/{prepared.Batch}");
            await Expect(visit.Page.Locator("#decide-release")).ToHaveCountAsync(0);
            await Expect(visit.Page.Locator("#decide-hold")).ToBeVisibleAsync();
        });
    }

    [Fact]
    public async Task TwoTelephones_AtOnce_TellTheSecondWhoWasFirst()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await prepared.MeasureAsync(80.0m, "i.fenwick");

        await stage.VisitAsync(Screen.Phone, DemoPerson.ShiftChemist, async second =>
        {
            await second.OpenAsync($"/night/{prepared.Batch}");
            await second.Page.Locator("#decide-release").TapAsync();
            await stage.VisitAsync(Screen.Phone, DemoPerson.OnCall, async first =>
            {
                await first.OpenAsync($"/night/{prepared.Batch}");
                await first.Page.Locator("#decide-release").TapAsync();
                await Signing.SignAsync(first.Page.GetByRole(AriaRole.Dialog), $"Release batch {prepared.Batch}", Signing.OnCallsPassword);
                await Expect(first.Page.Locator("#glance")).ToContainTextAsync("released");
            });

            await Expect(second.Page.Locator("#glance")).ToContainTextAsync("Kola Adeyemi");
            await Expect(second.Page.GetByRole(AriaRole.Dialog)).ToContainTextAsync(new Regex("nothing can be signed|was first"));
        });
    }

    [Fact]
    public async Task NeedMore_SentBack_WaitsForTheShiftUntilItIsTaken()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await prepared.MeasureAsync(80.0m, "t.marlowe");
        await stage.VisitAsync(Screen.Phone, DemoPerson.OnCall, async visit =>
        {
            await visit.OpenAsync($"/night/{prepared.Batch}");
            await visit.Page.Locator("#need-more").TapAsync();
            await visit.Page.GetByLabel("For the next shift").FillAsync("Measure the second bottle, please.");
            await visit.Page.Locator("#send-back").TapAsync();
            await Expect(visit.Page.GetByRole(AriaRole.Status)).ToContainTextAsync(["The shift is asked"]);
        });

        await stage.VisitAsync(Screen.Desk, DemoPerson.ShiftChemist, async visit =>
        {
            await visit.OpenAsync("/today");
            var note = visit.Page.Locator("#handed-over .handed").Filter(new LocatorFilterOptions { HasText = prepared.Batch });
            await Expect(note).ToContainTextAsync("Measure the second bottle, please.");
            await visit.PictureAsync("today-handed-over");
            await note.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "I take it" }).ClickAsync();
            await Expect(note).ToHaveCountAsync(0);

            await visit.OpenAsync($"/batches/{prepared.Batch}");
            await Expect(visit.Page.Locator("#handovers")).ToContainTextAsync("taken by Tessa Marlowe");
        });
    }

    [Fact]
    public async Task Hold_WithAHandoverNote_IsOneAct()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await prepared.MeasureAsync(80.0m, "t.marlowe");

        await stage.VisitAsync(Screen.Phone, DemoPerson.OnCall, async visit =>
        {
            await visit.OpenAsync($"/night/{prepared.Batch}");
            await visit.Page.Locator("#decide-hold").TapAsync();
            var dialog = visit.Page.GetByRole(AriaRole.Dialog);
            await visit.PictureAsync("night-hold");
            await dialog.GetByLabel("Reason for the hold").FillAsync("the second bottle is asked for");
            await dialog.GetByLabel("For the next shift").FillAsync("Measure bottle 2 before the ship berths.");
            await dialog.GetByLabel("By when").FillAsync("at six");
            await Signing.SignAsync(dialog, $"Hold batch {prepared.Batch}", Signing.OnCallsPassword);
            await Expect(dialog).ToContainTextAsync("Give date and time as");
            await dialog.GetByLabel("By when").FillAsync("");
            await Signing.SignAsync(dialog, $"Hold batch {prepared.Batch}", Signing.OnCallsPassword);

            await Expect(visit.Page.Locator("#glance")).ToContainTextAsync("on hold");
            await Expect(visit.Page.Locator(".handover")).ToContainTextAsync("Measure bottle 2 before the ship berths.");
        });
    }

    [Theory, InlineData("today"), InlineData("batches/{batch}"), InlineData("on-call"), InlineData("batches/cargo")]
    public async Task Page_OnATelephone_FitsIt(string path)
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await prepared.MeasureAsync(80.0m, "i.fenwick");

        await stage.VisitAsync(Screen.Phone, DemoPerson.OnCall, async visit =>
        {
            await visit.OpenAsync("/" + path.Replace("{batch}", prepared.Batch, StringComparison.Ordinal));

            await visit.UsableAsync();
            await visit.PictureAsync("phone-" + path.Split('/')[0] + (path.Contains("cargo", StringComparison.Ordinal) ? "-cargo" : ""));
        });
    }
}
