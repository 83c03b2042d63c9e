using LabVolatility.Browser.Tests.Harness;

namespace LabVolatility.Browser.Tests.Accessibility;

/// <summary>Every page of the application. A new page without a line here fails <see cref="EveryPageTests"/>.</summary>
internal static class ScannedPages
{
    // Who is shift chemist and quality manager sees every act that a page offers.
    private static readonly DemoPerson Most = DemoPerson.OnCall;

    public static IReadOnlyList<ScannedPage> All { get; } =
    [
        new("/today", "/today", Most),
        new("/samples", "/samples", Most),
        new("/samples/new", "/samples/new", Most),
        new("/samples/tanks", "/samples/tanks", Most),
        new("/samples/{Number}", "/samples/{sample}", Most),
        new("/samples/{Number}/hand-blend", "/samples/{sample}/hand-blend", Most),
        new("/bench", "/bench", Most),
        new("/bench/{Number}/{MethodPart}", "/bench/{waiting}/EN-13016-1", Most),
        new("/instruments", "/instruments", Most),
        new("/instruments/{Code}", "/instruments/VP-1", Most),
        new("/batches", "/batches", Most),
        new("/batches/new", "/batches/new", Most),
        new("/batches/{Number}", "/batches/{batch}", Most),
        new("/batches/cargo", "/batches/cargo", Most),
        new("/batches/cargo/new", "/batches/cargo/new", Most),
        new("/batches/cargo/{Number}", "{cargo}", Most),
        new("/night/{Number}", "/night/{batch}", Most),
        new("/on-call", "/on-call", Most),
        new("/limits", "/limits?grade=G95-E10&state=finished&area=EN228-A-W&point=terminal&date=2026-07-01&ethanol=9.8", Most),
        new("/limits/{Code}", "/limits/EN228-A-W", Most),
        new("/limits/{Code}", "/limits/US-9.0", Most),
        new("/limits/{Code}", "/limits/NORTHMERE-COAST", Most),
        new("/limits/{Code}/draft", "/limits/EN228-B/draft", Most),
        new("/limits/draft/area", "/limits/draft/area", Most),
        new("/methods", "/methods", Most),
        new("/methods/{Designation}", "/methods/ASTM-D5191", Most),
        new("/methods/{Designation}", "/methods/ASTM-D6378", Most),
        new("/methods/{Designation}", "/methods/EN-13016-3", Most),
        new("/records", "/records", Most),
        new("/setup/grades", "/setup/grades", Most),
        new("/setup/grades/{Code}", "/setup/grades/G95-E10", Most),
        new("/setup/new-grade", "/setup/new-grade", Most),
        new("/setup/tanks", "/setup/tanks", Most),
        new("/setup/sample-points", "/setup/sample-points", Most),
        new("/setup", "/setup", DemoPerson.Administrator),
        new("/setup/laboratory", "/setup/laboratory", DemoPerson.Administrator),
        new("/setup/people", "/setup/people", DemoPerson.Administrator),
        new("/setup/people/{Id:guid}", "{person}", DemoPerson.Administrator),
        new("/setup/keys", "/setup/keys", DemoPerson.Administrator),
        new("/account", "/account", DemoPerson.Auditor, HasCircuit: false),
        new("/sign-in", "/sign-in", null, HasCircuit: false),
        new("/first-administrator", "/first-administrator", null, HasCircuit: false),
        new("/certificates/check", "/certificates/check", null, HasCircuit: false),
        new("/certificates/check/{Code}", "/certificates/check/AAAA-BBBB-CCCC", null, HasCircuit: false),
        new("/not-found", "/not-found", Most),
        new("/not-found", "/nothing-is-here", Most, HasCircuit: false),
    ];
}
