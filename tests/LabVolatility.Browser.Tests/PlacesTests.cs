using LabVolatility.Browser.Tests.Harness;
using Microsoft.Playwright;
using Xunit;

namespace LabVolatility.Browser.Tests;

/// <summary>Every place that the rail leads to, as the people see it: opens without an error, fits the screen, is accessible.</summary>
public sealed class PlacesTests(Stage stage)
{
    // Without a circuit.
    private static readonly string[] Static = ["account", "emergency"];

    // Each at the screen they stand at; EveryPageTests looks at the same places on a desk.
    public static TheoryData<string, string> Views => new()
    {
        { DemoPerson.Analyst.FullName, Screen.Tablet.Name },
        { DemoPerson.QualityManager.FullName, Screen.Tablet.Name },
        { DemoPerson.Administrator.FullName, Screen.Desk.Name },
    };

    public static TheoryData<string, string> StaticPages =>
        new(from path in Static from screen in Screen.All select (path, screen.Name));

    [Theory, MemberData(nameof(Views))]
    public async Task Places_All_AreUsable(string person, string screen) =>
        await stage.VisitAsync(Screen.Named(screen), new DemoPerson(person), async visit =>
        {
            await visit.OpenAsync("/");
            var places = await visit.Page.GetByRole(AriaRole.Navigation, new PageGetByRoleOptions { Name = "Places", IncludeHidden = true })
                .Locator("a").EvaluateAllAsync<string[]>("links => links.map(link => link.getAttribute('href'))");

            Assert.NotEmpty(places);
            var faults = new List<string>();
            foreach (var place in places)
            {
                await visit.OpenAsync(place);
                faults.AddRange(await visit.FaultsAsync());
                await visit.PictureAsync($"{place.Trim('/').Replace('/', '-')}-{person.Split(' ')[0].ToLowerInvariant()}");
            }

            Assert.True(faults.Count == 0, string.Join('\n', faults));
        });

    [Theory, MemberData(nameof(StaticPages))]
    public async Task StaticPages_All_AreUsable(string path, string screen) =>
        await stage.VisitAsync(Screen.Named(screen), DemoPerson.Analyst, async visit =>
        {
            await visit.OpenStaticAsync(path);

            await visit.UsableAsync();
            await visit.PictureAsync(path);
        });
}
