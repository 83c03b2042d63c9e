using LabVolatility.Browser.Tests.Harness;
using Xunit;

namespace LabVolatility.Browser.Tests.Accessibility;

/// <summary>Every page while the laboratory holds nothing: it opens, teaches what to do first, fits the screen, is accessible.</summary>
public sealed class EmptyLaboratoryTests(EmptyLaboratory laboratory) : IClassFixture<EmptyLaboratory>
{
    [Fact]
    public void FirstDoor_BeforeAnybody_IsUsable() =>
        Assert.True(laboratory.FaultsBeforeAnybody.Count == 0, string.Join('\n', laboratory.FaultsBeforeAnybody));

    [Fact]
    public Task Pages_OfTheWork_AreUsable() => laboratory.VisitAsKeeperAsync(visit => ScanAsync(visit, DemoPerson.OnCall));

    [Fact]
    public Task Pages_OfTheAdministrator_AreUsable() => laboratory.VisitAsAdministratorAsync(visit => ScanAsync(visit, DemoPerson.Administrator));

    [Fact]
    public Task Pages_OpenToEverybody_AreUsable() => laboratory.VisitAsync(visit => ScanAsync(visit, null));

    private static async Task ScanAsync(Visit visit, DemoPerson? inTheDemo)
    {
        visit.Complaints.Expect("404");
        var faults = new List<string>();
        foreach (var page in ScannedPages.All.Where(page => page.Person == inTheDemo && !page.Address.StartsWith('{')))
        {
            await page.OpenAsync(visit, page.EmptyAddress);
            faults.AddRange(await visit.FaultsAsync());
            await visit.PictureAsync("empty-" + string.Concat(page.EmptyAddress.Split('?')[0].Trim('/').Select(c => char.IsLetterOrDigit(c) ? c : '-')));
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }
}
