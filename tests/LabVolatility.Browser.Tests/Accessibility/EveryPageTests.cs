using LabVolatility.Browser.Tests.Harness;
using LabVolatility.Browser.Tests.Samples;
using Microsoft.Playwright;
using Xunit;

namespace LabVolatility.Browser.Tests.Accessibility;

/// <summary>Every page with something on it: opens without an error, fits the screen, is accessible in both themes.</summary>
public sealed class EveryPageTests(Stage stage)
{
    private const string Nobody = "nobody";

    public static TheoryData<string> People => [.. ScannedPages.All.Select(page => page.Person?.FullName ?? Nobody).Distinct()];

    [Fact]
    public void Pages_ThatArePublished_AreAllScanned() =>
        Assert.Equal(PublishedRoutes.Templates(), ScannedPages.All.Select(page => page.Template).Distinct().Order(StringComparer.Ordinal));

    [Theory, MemberData(nameof(People))]
    public async Task Pages_Filled_AreUsable(string person)
    {
        using var prepared = await Prepared.MakeAsync(stage);
        using var waiting = await Prepared.MakeAsync(stage);
        await prepared.MeasureAsync(80.0m, "i.fenwick");

        await (person == Nobody ? stage.VisitAsync(Screen.Desk, ScanAsync) : stage.VisitAsync(Screen.Desk, new DemoPerson(person), ScanAsync));

        async Task ScanAsync(Visit visit)
        {
            visit.Complaints.Expect("404");
            var faults = new List<string>();
            foreach (var page in ScannedPages.All.Where(page => (page.Person?.FullName ?? Nobody) == person))
            {
                await page.OpenAsync(visit, await AddressAsync(visit, page));
                faults.AddRange(await visit.FaultsAsync());
                await visit.PictureAsync(NameOf(page.Address));
            }

            Assert.True(faults.Count == 0, string.Join('\n', faults));
        }

        async Task<string> AddressAsync(Visit visit, ScannedPage page) => page.Address
            .Replace("{batch}", prepared.Batch, StringComparison.Ordinal)
            .Replace("{sample}", prepared.Sample, StringComparison.Ordinal)
            .Replace("{waiting}", waiting.Sample, StringComparison.Ordinal)
            .Replace("{person}", page.Address.Contains("{person}", StringComparison.Ordinal) ? await FirstPersonAsync(visit) : "", StringComparison.Ordinal)
            .Replace("{cargo}", page.Address.Contains("{cargo}", StringComparison.Ordinal) ? await FirstCargoAsync(visit) : "", StringComparison.Ordinal);
    }

    private static async Task<string> FirstPersonAsync(Visit visit)
    {
        await visit.OpenAsync("/setup/people");
        return (await visit.Page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Change" }).First.GetAttributeAsync("href"))!;
    }

    private static async Task<string> FirstCargoAsync(Visit visit)
    {
        await visit.OpenAsync("/batches/cargo");
        return (await visit.Page.Locator("main a[href^='/batches/cargo/']:not([href$='/new'])").First.GetAttributeAsync("href"))!;
    }

    private static string NameOf(string address) => string.Concat(address.Split('?')[0].Trim('/').Select(c => char.IsLetterOrDigit(c) ? c : '-'));
}
