using LabVolatility.Browser.Tests.Bench;
using LabVolatility.Browser.Tests.Harness;
using LabVolatility.Browser.Tests.Samples;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace LabVolatility.Browser.Tests.Batches;

/// <summary>Two people side by side: what one does appears on the other's open pages, and takes nothing from them.</summary>
public sealed class LivePagesTests(Stage stage)
{
    private const string News = "[data-news]";

    [Fact]
    public async Task Result_OfAColleague_AppearsOnTheBatchPageAndOnToday()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await stage.VisitAsync(Screen.Desk, DemoPerson.ShiftChemist, async chemist =>
        {
            await chemist.OpenAsync($"/batches/{prepared.Batch}");
            await stage.VisitAsync(Screen.Tablet, DemoPerson.OnCall, async onCall =>
            {
                await onCall.OpenAsync("/today");

                await Appearance.MeasureAsync(
                    "Result", () => prepared.MeasureAsync(80.0m, "i.fenwick"),
                    (chemist.Page, News, $"reported determination, sample {prepared.Sample}"),
                    (chemist.Page, "main", "73.4"),
                    (onCall.Page, News, $"reported determination, sample {prepared.Sample}"));
            });
            await chemist.PictureAsync("batch-news");
            await chemist.UsableAsync();
        });
    }

    [Fact]
    public async Task Decision_OfAColleague_AppearsOnTheListAndOnTheBatchPage()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await prepared.MeasureAsync(80.0m, "i.fenwick");
        await stage.VisitAsync(Screen.Desk, DemoPerson.QualityManager, async list =>
        {
            await list.OpenAsync($"/batches?find={prepared.Batch}");
            await stage.VisitAsync(Screen.Desk, DemoPerson.OnCall, async open =>
            {
                await open.OpenAsync($"/batches/{prepared.Batch}");
                await stage.VisitAsync(Screen.Desk, DemoPerson.ShiftChemist, async signer =>
                {
                    var dialog = await Signing.AskAsync(signer, prepared.Batch, "hold");
                    await dialog.GetByLabel("Reason for the hold").FillAsync("the seal is looked at");
                    await Appearance.MeasureAsync(
                        "Hold", () => Signing.SignAsync(dialog, $"Hold batch {prepared.Batch}", Signing.ShiftChemistsPassword),
                        (open.Page, News, $"Tessa Marlowe held batch {prepared.Batch}"),
                        (open.Page, "#glance", "the seal is looked at"),
                        (list.Page, "#batches tbody", "on hold"));
                    dialog = await Signing.AskAsync(signer, prepared.Batch, "release");
                    await Appearance.MeasureAsync(
                        "Release", () => Signing.SignAsync(dialog, $"Release batch {prepared.Batch}", Signing.ShiftChemistsPassword),
                        (open.Page, News, $"Tessa Marlowe released batch {prepared.Batch}"),
                        (open.Page, "#glance", "released"),
                        (list.Page, "#batches tbody", "released"));
                });
            });
        });
    }

    [Fact]
    public async Task Sign_ResultComesInMeanwhile_IsToldAndNotSigned()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await prepared.MeasureAsync(80.0m, "i.fenwick");
        await stage.VisitAsync(Screen.Desk, DemoPerson.ShiftChemist, async visit =>
        {
            var dialog = await Signing.AskAsync(visit, prepared.Batch, "release");
            var sign = dialog.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = $"Release batch {prepared.Batch}", Exact = true });
            await dialog.GetByLabel("Remark").FillAsync("the ship waits");

            await prepared.MeasureAsync(80.2m, "o.brandt", bottle: 2);

            await Expect(dialog.GetByRole(AriaRole.Alert).First).ToContainTextAsync("Close this and look at the batch as it is now");
            await Expect(sign).ToBeDisabledAsync();
            await Expect(dialog.GetByLabel("Remark")).ToHaveValueAsync("the ship waits");
            await visit.PictureAsync("sign-outdated");
            await dialog.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Cancel" }).ClickAsync();
            await Signing.ReleaseAsync(visit, prepared.Batch, Signing.ShiftChemistsPassword);
        });
    }

    [Fact]
    public async Task Instrument_PutOutOfService_AppearsAtTheBenchAndKeepsTypingAndFocus()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await stage.VisitAsync(Screen.Desk, DemoPerson.Analyst, async bench =>
        {
            await bench.OpenAsync(prepared.BenchAddress);
            await bench.Page.Locator("#bench[data-listening=yes]").WaitForAsync();
            await bench.Page.Locator("#field-readings-totalPressure").FocusAsync();
            await bench.Page.Keyboard.TypeAsync("62,");
            await stage.VisitAsync(Screen.Desk, DemoPerson.QualityManager, async other =>
            {
                await other.OpenAsync("/instruments/VP-2");
                await other.Page.Locator("#stop summary").ClickAsync();
                await other.Page.Locator("#stop-reason").FillAsync("the piston sticks");
                await Appearance.MeasureAsync(
                    "Instrument stopped", () => other.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Take VP-2 out of service" }).ClickAsync(),
                    (bench.Page, ".pick.not", "the piston sticks"));
                await bench.Page.Keyboard.TypeAsync("1");
                await other.Page.Locator("#put-back summary").ClickAsync();
                await other.Page.Locator("#back-reason").FillAsync("cleaned");
                await other.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Put VP-2 back in service" }).ClickAsync();
                await Expect(bench.Page.Locator(News)).ToContainTextAsync("put instrument back in service, instrument VP-2");
            });

            await Expect(bench.Page.Locator("#field-readings-totalPressure")).ToBeFocusedAsync();
            await Expect(bench.Page.Locator("#field-readings-totalPressure")).ToHaveValueAsync("62,1");
        });
    }

    [Fact]
    public async Task SameBottle_ReportedByAnother_KeepsWhatIsTypedAndIsRefused()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await stage.VisitAsync(Screen.Desk, DemoPerson.Analyst, async visit =>
        {
            await visit.OpenAsync(prepared.BenchAddress);
            await ByKeyboard.FillAsync(visit.Page, "75", "80,0");
            await Expect(visit.Page.Locator("#draft-line[data-draft-state=Saved]")).ToBeVisibleAsync();

            await prepared.MeasureAsync(80.0m, "o.brandt");

            await Expect(visit.Page.Locator("#bench")).ToContainTextAsync("has completed this test meanwhile");
            await Expect(visit.Page.Locator("#field-readings-totalPressure")).ToHaveValueAsync("80,0");
            await Expect(visit.Page.Locator("#made tbody tr")).ToHaveCountAsync(1);
            await visit.Page.Keyboard.PressAsync("Control+Enter");
            await Expect(visit.Page.Locator("#bench .summary")).ToContainTextAsync("has been opened already");
            await Expect(visit.Page.Locator("#made tbody tr")).ToHaveCountAsync(1);
        });
    }

    [Fact]
    public async Task Presence_OfTwoOnOneSample_IsSeenByBothAndGoesWithThem()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await stage.VisitAsync(Screen.Desk, DemoPerson.Analyst, async analyst =>
        {
            await analyst.OpenAsync(prepared.BenchAddress);
            await stage.VisitAsync(Screen.Tablet, DemoPerson.OtherAnalyst, async other =>
            {
                await Appearance.MeasureAsync(
                    "Presence", () => other.OpenAsync(prepared.BenchAddress),
                    (analyst.Page, "[data-presence]", "Oskar Brandt is here since"),
                    (other.Page, "[data-presence]", "Ines Fenwick is here since"));
                await other.Page.Locator("#field-readings-totalPressure").FocusAsync();
                await Appearance.MeasureAsync(
                    "Typing", () => other.Page.Keyboard.TypeAsync("62,1"),
                    (analyst.Page, "[data-presence]", "Oskar Brandt is entering here since"));
                await analyst.PictureAsync("presence");
                await analyst.UsableAsync();
            });

            await Expect(analyst.Page.Locator("[data-presence]")).Not.ToContainTextAsync("Oskar Brandt");
        });
    }
}
