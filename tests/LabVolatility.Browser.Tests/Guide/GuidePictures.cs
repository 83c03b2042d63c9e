using LabVolatility.Browser.Tests.Bench;
using LabVolatility.Browser.Tests.Harness;
using Microsoft.Playwright;

namespace LabVolatility.Browser.Tests.Guide;

/// <summary>Every picture of docs/guide, in the order of its chapters.</summary>
internal static class GuidePictures
{
    public static IReadOnlyList<GuidePicture> All { get; } =
    [
        new("sign-in", null, visit => visit.OpenStaticAsync("/sign-in"), Shot.Desk),

        new("analyst-bench", DemoPerson.Analyst, visit => visit.OpenAsync("/bench"), Shot.Tablet),
        new("analyst-instrument", DemoPerson.Analyst, visit => visit.OpenAsync("/instruments/VP-1"), Shot.Desk),
        new("analyst-test", DemoPerson.Analyst, visit => MeasureAsync(visit, "EN 13016-1", fill: "75", pressure: "94,6"), Shot.Tablet, Shot.TabletDark, Shot.Desk, Shot.DeskDark),
        new("analyst-blocked", DemoPerson.Analyst, visit => MeasureAsync(visit, "ASTM D5191", fill: "65", pressure: "77,2"), Shot.Desk),
        new("analyst-arithmetic", DemoPerson.Analyst, async visit =>
        {
            await visit.OpenAsync(await FirstReleasedAsync(visit));
            await visit.Page.Locator("main .trail-open").First.ClickAsync();
            await visit.Page.Locator(".trail-sheet").WaitForAsync();
        }, Shot.Desk),
        new("analyst-hand-blend", DemoPerson.Analyst, async visit =>
        {
            await OpenTestAsync(visit, "ASTM D5191");
            await visit.OpenAsync($"/samples/{new Uri(visit.Page.Url).Segments[2]}hand-blend");
        }, Shot.Desk),
        new("analyst-keys", DemoPerson.Analyst, async visit =>
        {
            await OpenTestAsync(visit, "EN 13016-1");
            await visit.Page.Keyboard.PressAsync("Control+/");
            await visit.Page.Locator("dialog#keys[open]").WaitForAsync();
        }, Shot.Desk),

        new("chemist-today", DemoPerson.ShiftChemist, visit => visit.OpenAsync("/today"), Shot.Desk, Shot.DeskDark),
        new("chemist-batch", DemoPerson.ShiftChemist, visit => OpenWaitingAsync(visit, "conforms"), Shot.Desk, Shot.Tablet, Shot.TabletDark),
        new("chemist-not-decided", DemoPerson.ShiftChemist, visit => OpenWaitingAsync(visit, "not decided"), Shot.Desk),
        new("chemist-sign", DemoPerson.ShiftChemist, async visit =>
        {
            await OpenWaitingAsync(visit, "conforms");
            await visit.Page.Locator("#decide-release").ClickAsync();
            await visit.Page.GetByRole(AriaRole.Dialog).WaitForAsync();
        }, Shot.Desk),
        new("chemist-night", DemoPerson.OnCall, async visit =>
        {
            await OpenWaitingAsync(visit, "conforms");
            await visit.OpenAsync(new Uri(visit.Page.Url).AbsolutePath.Replace("/batches/", "/night/", StringComparison.Ordinal));
        }, Shot.Phone, Shot.PhoneDark),
        new("chemist-on-call", DemoPerson.ShiftChemist, visit => visit.OpenAsync("/on-call"), Shot.Desk),
        new("chemist-cargo", DemoPerson.ShiftChemist, visit => visit.OpenAsync("/batches/cargo/new"), Shot.Desk),
        new("chemist-check", DemoPerson.ShiftChemist, async visit =>
        {
            await visit.OpenAsync(await FirstReleasedAsync(visit));
            var code = await visit.Page.Locator("table[aria-labelledby=certificates] code").First.InnerTextAsync();
            await visit.OpenStaticAsync($"/certificates/check/{code}");
            await visit.Page.Locator("#found").WaitForAsync();
        }, Shot.Desk),

        new("engineer-today", DemoPerson.BlendingEngineer, visit => ScrolledAsync(visit, "/today", "#margins-title"), Shot.Desk),
        new("engineer-applies", DemoPerson.BlendingEngineer, visit => visit.OpenAsync(
            "/limits?grade=G95-E10&state=finished&area=EN228-A-W&point=terminal&date=2026-07-01&ethanol=9.8"), Shot.Desk),
        new("engineer-area", DemoPerson.BlendingEngineer, visit => visit.OpenAsync("/limits/NORTHMERE-COAST"), Shot.Desk),
        new("engineer-new-batch", DemoPerson.BlendingEngineer, visit => visit.OpenAsync("/batches/new"), Shot.Desk),

        new("quality-today", DemoPerson.QualityManager, visit => ScrolledAsync(visit, "/today", "#reference-title"), Shot.Desk),
        new("quality-method", DemoPerson.QualityManager, visit => ScrolledAsync(visit, "/methods/EN-13016-1", "#precision h2"), Shot.Desk),

        new("administrator-people", DemoPerson.Administrator, visit => visit.OpenAsync("/setup/people"), Shot.Desk),

        new("auditor-records", DemoPerson.Auditor, async visit =>
        {
            await visit.OpenAsync("/records");
            await visit.Page.Locator("main .list button[aria-expanded=false]").First.ClickAsync();
            await visit.Page.Locator("main .keys-table").First.WaitForAsync();
        }, Shot.Desk),
    ];

    private static async Task OpenTestAsync(Visit visit, string method)
    {
        await visit.OpenAsync("/bench");
        await FollowAsync(visit, visit.Page.Locator($"#waiting tbody tr:has-text('{method}') a.strong").First);
        await visit.Page.Locator("#bench[data-listening=yes]").WaitForAsync();
    }

    private static async Task MeasureAsync(Visit visit, string method, string fill, string pressure)
    {
        await OpenTestAsync(visit, method);
        await ByKeyboard.FillAsync(visit.Page, fill, pressure);
        await visit.Page.Locator(".bench-outcome .result-table").WaitForAsync();
        await visit.Page.Locator("#draft-line[data-draft-state=Saved]").WaitForAsync();
    }

    // The most urgent one stands first.
    private static async Task OpenWaitingAsync(Visit visit, string outcome)
    {
        await visit.OpenAsync("/today");
        await FollowAsync(visit, visit.Page.Locator($"#waiting tbody tr:has(span:text-is('{outcome}')) a.strong").First);
        await visit.Page.Locator("#glance").WaitForAsync();
    }

    private static async Task<string> FirstReleasedAsync(Visit visit)
    {
        await visit.OpenAsync("/batches?standing=Released");
        return (await visit.Page.Locator("#batches tbody a.strong").First.GetAttributeAsync("href"))!;
    }

    private static async Task FollowAsync(Visit visit, ILocator link)
    {
        var address = await link.GetAttributeAsync("href");
        await link.ClickAsync();
        await visit.Page.WaitForURLAsync($"**{address}");
        await visit.InteractiveAsync();
    }

    private static async Task ScrolledAsync(Visit visit, string address, string to)
    {
        await visit.OpenAsync(address);
        await visit.Page.Locator(to).EvaluateAsync("heading => heading.scrollIntoView({ block: 'start' })");
    }
}
