using LabVolatility.Browser.Tests.Harness;
using LabVolatility.Browser.Tests.Samples;
using Xunit;

namespace LabVolatility.Browser.Tests;

/// <summary>The pages behind the places: one object, one form. They open without an error, fit the screen, are accessible.</summary>
public sealed class InnerPagesTests(Stage stage)
{
    // Who is shift chemist and quality manager sees every act that these pages offer.
    private static readonly string[] Pages =
    [
        "batches/{batch}", "batches/new", "samples/{sample}", "samples/new", "samples/tanks", "{bench}", "instruments/VP-1",
        "limits/EN228-A-W", "limits/US-9.0", "limits/NORTHMERE-COAST", "limits/draft/area", "limits/EN228-B/draft", "methods/ASTM-D5191",
        "setup/grades", "setup/new-grade", "setup/tanks", "setup/sample-points",
        "limits?grade=G95-E10&state=finished&area=EN228-A-W&point=terminal&date=2026-07-01&ethanol=9.8",
    ];

    private static readonly string[] AdministratorsPages = ["setup", "setup/people", "setup/keys"];

    private static readonly string[] OpenPages = ["sign-in", "certificates/check", "emergency"];

    [Fact]
    public async Task Pages_OfOneObject_AreUsable()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await prepared.MeasureAsync(80.0m, "i.fenwick");
        var paths = Pages.Select(p => p.Replace("{batch}", prepared.Batch, StringComparison.Ordinal)
            .Replace("{sample}", prepared.Sample, StringComparison.Ordinal)
            .Replace("{bench}", prepared.BenchAddress.TrimStart('/'), StringComparison.Ordinal));

        await stage.VisitAsync(Screen.Desk, DemoPerson.OnCall, visit => UsableAsync(visit, paths, visit.OpenAsync));
    }

    [Fact]
    public async Task Pages_OfTheAdministrator_AreUsable() =>
        await stage.VisitAsync(Screen.Desk, DemoPerson.Administrator, visit => UsableAsync(visit, AdministratorsPages, visit.OpenAsync));

    [Fact]
    public async Task Pages_OpenToEverybody_AreUsable() =>
        await stage.VisitAsync(Screen.Desk, visit => UsableAsync(visit, OpenPages, visit.OpenStaticAsync));

    private static async Task UsableAsync(Visit visit, IEnumerable<string> paths, Func<string, Task> open)
    {
        var faults = new List<string>();
        foreach (var path in paths)
        {
            await open("/" + path);
            faults.AddRange(await visit.FaultsAsync());
            await visit.PictureAsync(string.Concat(path.Split('?')[0].Select(c => char.IsLetterOrDigit(c) ? c : '-')));
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }
}
