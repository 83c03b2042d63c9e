using LabVolatility.Browser.Tests.Harness;
using LabVolatility.Browser.Tests.Samples;
using Microsoft.Playwright;
using Xunit;

namespace LabVolatility.Browser.Tests.Accessibility;

/// <summary>Pages after a mistake, and with something opened over them: as accessible as before.</summary>
public sealed class PageStatesTests(Stage stage)
{
    private const string Nobody = "nobody";

    public static TheoryData<string> WhoErrs => [.. PeopleOf(FormErrors.All)];

    public static TheoryData<string> WhoOpens => [.. PeopleOf(OpenedThings.All)];

    [Theory, MemberData(nameof(WhoErrs))]
    public Task Forms_SentWithMistakes_AreUsable(string person) => ScanAsync(FormErrors.All, person);

    [Theory, MemberData(nameof(WhoOpens))]
    public Task Things_OpenedOverAPage_AreUsable(string person) => ScanAsync(OpenedThings.All, person);

    [Fact]
    public async Task Places_UnfoldedOnATablet_AreUsable() =>
        await stage.VisitAsync(Screen.Tablet, DemoPerson.OnCall, async visit =>
        {
            await visit.OpenAsync("/methods");
            await visit.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Places" }).ClickAsync();
            await visit.Page.Locator("#places.open").WaitForAsync();

            await visit.UsableAsync();
        });

    [Fact]
    public async Task Session_Ended_IsUsable() =>
        await stage.VisitAsync(Screen.Desk, async visit =>
        {
            await visit.SignInAsync(DemoPerson.BlendingEngineer);
            await visit.OpenAsync("/methods");
            var other = await visit.Page.Context.NewPageAsync();
            await other.GotoAsync("/account");
            await other.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Sign out" }).ClickAsync();
            await other.WaitForURLAsync("**/sign-in");
            await visit.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Dark" }).ClickAsync();
            await visit.Page.GetByRole(AriaRole.Alertdialog).WaitForAsync();

            Assert.Empty(await visit.FaultsAsItStandsAsync());
        });

    private static IEnumerable<string> PeopleOf(IEnumerable<PageState> states) => states.Select(state => state.Person?.FullName ?? Nobody).Distinct();

    private async Task ScanAsync(IReadOnlyList<PageState> states, string person)
    {
        using var prepared = await Prepared.MakeAsync(stage);
        using var waiting = await Prepared.MakeAsync(stage);
        await prepared.MeasureAsync(80.0m, "i.fenwick");

        await (person == Nobody ? stage.VisitAsync(Screen.Desk, VisitAsync) : stage.VisitAsync(Screen.Desk, new DemoPerson(person), VisitAsync));

        async Task VisitAsync(Visit visit)
        {
            var faults = new List<string>();
            foreach (var state in states.Where(state => (state.Person?.FullName ?? Nobody) == person))
            {
                var address = state.Address
                    .Replace("{batch}", prepared.Batch, StringComparison.Ordinal)
                    .Replace("{sample}", prepared.Sample, StringComparison.Ordinal)
                    .Replace("{waiting}", waiting.Sample, StringComparison.Ordinal);
                await (state.HasCircuit ? visit.OpenAsync(address) : visit.OpenStaticAsync(address));
                await state.Bring(visit.Page);
                await visit.Page.Locator(state.Shows).First.WaitForAsync();
                faults.AddRange((await visit.FaultsAsync()).Select(fault => $"{state.Name}: {fault}"));
                await visit.PictureAsync($"state-{state.Name.Replace(' ', '-')}");
            }

            Assert.True(faults.Count == 0, string.Join('\n', faults));
        }
    }
}
