using LabVolatility.Browser.Tests.Harness;
using LabVolatility.Browser.Tests.Samples;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace LabVolatility.Browser.Tests.Batches;

/// <summary>What a role may not do is not offered, and its address does not open it either.</summary>
public sealed class WithoutTheRightTests(Stage stage)
{
    public static TheoryData<string, string, string> Addresses => new()
    {
        { DemoPerson.Analyst.FullName, "/batches/new", "shift chemist or blending engineer" },
        { DemoPerson.Analyst.FullName, "/limits/draft/area", "quality manager" },
        { DemoPerson.BlendingEngineer.FullName, "/samples/new", "analyst or shift chemist or quality manager" },
    };

    [Fact]
    public async Task Decision_ForAnAnalyst_IsNotOffered()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await prepared.MeasureAsync(80.0m, "i.fenwick");

        await stage.VisitAsync(Screen.Desk, DemoPerson.OtherAnalyst, async visit =>
        {
            await visit.OpenAsync($"/batches/{prepared.Batch}");

            await Expect(visit.Page.Locator("#glance")).ToContainTextAsync("conforms");
            await Expect(visit.Page.Locator("#decision-bar button")).ToHaveCountAsync(0);
            await Expect(visit.Page.Locator("#change")).ToHaveCountAsync(0);
        });
    }

    [Fact]
    public async Task Reporting_ForABlendingEngineer_IsNotOffered()
    {
        using var prepared = await Prepared.MakeAsync(stage);

        await stage.VisitAsync(Screen.Desk, DemoPerson.BlendingEngineer, async visit =>
        {
            await visit.OpenAsync(prepared.BenchAddress);

            await Expect(visit.Page.Locator("#bench")).ToContainTextAsync("Measuring is for the analyst");
            await Expect(visit.Page.Locator("#report")).ToHaveCountAsync(0);
        });
    }

    [Theory, MemberData(nameof(Addresses))]
    public async Task Address_OfAPageForOthers_SaysWhomItIsFor(string person, string path, string holders) =>
        await stage.VisitAsync(Screen.Desk, new DemoPerson(person), async visit =>
        {
            await visit.OpenAsync(path);

            await Expect(visit.Page.GetByRole(AriaRole.Status).Filter(new LocatorFilterOptions { HasText = $"This page is for the {holders}" })).ToBeVisibleAsync();
            await Expect(visit.Page.Locator("main input, main select")).ToHaveCountAsync(0);
        });

    [Fact]
    public async Task AddressOfTheAccounts_ForAQualityManager_IsNotAnswered() =>
        await stage.VisitAsync(Screen.Desk, DemoPerson.QualityManager, async visit =>
        {
            visit.Complaints.Expect("403");

            await visit.OpenStaticAsync("/setup/people");

            await Expect(visit.Page.Locator("body")).ToContainTextAsync("Not for your role");
            await Expect(visit.Page.Locator("body")).Not.ToContainTextAsync("o.brandt");
        });
}
