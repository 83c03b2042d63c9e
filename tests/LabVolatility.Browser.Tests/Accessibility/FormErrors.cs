using LabVolatility.Browser.Tests.Harness;
using static LabVolatility.Browser.Tests.Accessibility.PageState;

namespace LabVolatility.Browser.Tests.Accessibility;

/// <summary>Forms sent with what they refuse.</summary>
internal static class FormErrors
{
    private const string Summary = ".summary";

    public static IReadOnlyList<PageState> All { get; } =
    [
        new("new batch", DemoPerson.OnCall, "/batches/new", page => PressAsync(page, "Register the batch"), Summary),
        new("changed batch", DemoPerson.OnCall, "/batches/{batch}", async page =>
        {
            await PressAsync(page, "Change the batch");
            await page.GetByLabel("Volume, m³").FillAsync("much");
            await PressAsync(page, "Save the change");
        }, Summary),
        new("new sample", DemoPerson.OnCall, "/samples/new", page => PressAsync(page, "Register and go to labels"), Summary),
        new("amendment", DemoPerson.OnCall, "/samples/{sample}", page => UnfoldAndPressAsync(page, "Amend it", "Amend the determination"), Summary),
        new("movement", DemoPerson.OnCall, "/samples/tanks", async page =>
        {
            await page.GetByLabel("Began at, local time").FillAsync("at dawn");
            await PressAsync(page, "Record");
        }, Summary),
        new("determination", DemoPerson.OnCall, "/bench/{waiting}/EN-13016-1", page => PressAsync(page, "Report determination"), Summary),
        new("verification", DemoPerson.OnCall, "/instruments/VP-1", page => PressAsync(page, "Enter verification"), Summary),
        new("stop", DemoPerson.OnCall, "/instruments/VP-1", page => UnfoldAndPressAsync(page, "Take it out of service", "Take VP-1 out of service"), Summary),
        new("area", DemoPerson.OnCall, "/limits/draft/area", page => PressAsync(page, "Save the draft"), Summary),
        new("limit", DemoPerson.OnCall, "/limits/EN228-B/draft", page => PressAsync(page, "Save the draft"), Summary),
        new("what applies", DemoPerson.OnCall, "/limits", async page =>
        {
            await page.GetByLabel("Day of use").FillAsync("in summer");
            await PressAsync(page, "Show what applies");
        }, Summary),
        new("precision", DemoPerson.OnCall, "/methods/ASTM-D5191", page => UnfoldAndPressAsync(page, "Draft r and R", "Save the draft"), Summary),
        new("grade", DemoPerson.OnCall, "/setup/new-grade", page => PressAsync(page, "Add the grade"), Summary),
        new("tank", DemoPerson.OnCall, "/setup/tanks", page => PressAsync(page, "Add the tank"), Summary),
        new("sample point", DemoPerson.OnCall, "/setup/sample-points", page => PressAsync(page, "Add the sample point"), Summary),
        new("records", DemoPerson.OnCall, "/records", async page =>
        {
            await page.GetByLabel("From day").FillAsync("yesterday");
            await PressAsync(page, "Find");
        }, ".problem:visible"),
        new("laboratory", DemoPerson.Administrator, "/setup/laboratory", async page =>
        {
            await page.GetByLabel("Time zone").FillAsync("Nowhere/At all");
            await PressAsync(page, "Save settings");
        }, Summary),
        new("account", DemoPerson.Administrator, "/setup/people", page => PressAsync(page, "Open account"), Summary),
        new("key", DemoPerson.Administrator, "/setup/keys", page => PressAsync(page, "Make key"), Summary),
        new("own password", DemoPerson.Auditor, "/account", page => PressAsync(page, "Change password"), Summary, HasCircuit: false),
        new("sign-in", null, "/sign-in", async page =>
        {
            await page.GetByLabel("Sign-in name").FillAsync("nobody.of-us");
            await PressAsync(page, "Sign in");
        }, Summary, HasCircuit: false),
        new("certificate", null, "/certificates/check", async page =>
        {
            await page.GetByLabel("Check code").FillAsync("AAAA-BBBB-CCCC");
            await PressAsync(page, "Check it");
        }, Summary, HasCircuit: false),
    ];
}
