using LabVolatility.Browser.Tests.Harness;
using Microsoft.Playwright;
using Xunit;

namespace LabVolatility.Browser.Tests.People;

public sealed class SignInTests(Stage stage)
{
    public static TheoryData<string> Screens => [.. Screen.All.Select(screen => screen.Name)];

    [Fact]
    public async Task SignIn_DemoPerson_IsNamedOnThePage() =>
        await stage.VisitAsync(Screen.Desk, async visit =>
        {
            await visit.SignInAsync(DemoPerson.ShiftChemist);

            await Assertions.Expect(visit.Page.GetByRole(AriaRole.Banner)).ToContainTextAsync("Tessa Marlowe");
        });

    [Fact]
    public async Task SignIn_WrongPassword_SaysSoAndKeepsTheName() =>
        await stage.VisitAsync(Screen.Desk, async visit =>
        {
            await visit.OpenStaticAsync("sign-in");
            await visit.Page.GetByLabel("Sign-in name").FillAsync("p.varga");
            await visit.Page.GetByLabel("Password", new PageGetByLabelOptions { Exact = true }).FillAsync("not the password at all");
            await visit.Page.GetByLabel("Password", new PageGetByLabelOptions { Exact = true }).PressAsync("Enter");

            await Assertions.Expect(visit.Page.GetByRole(AriaRole.Alert)).ToBeVisibleAsync();
            await Assertions.Expect(visit.Page.GetByLabel("Sign-in name")).ToHaveValueAsync("p.varga");
        });

    [Fact]
    public async Task SignOut_Done_PageAsksToSignIn() =>
        await stage.VisitAsync(Screen.Desk, async visit =>
        {
            await visit.SignInAsync(DemoPerson.Auditor);
            await visit.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Sign out" }).ClickAsync();
            await visit.Page.WaitForURLAsync("**/sign-in");

            await visit.OpenStaticAsync("account");

            await Assertions.Expect(visit.Page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("/sign-in"));
        });

    [Theory, MemberData(nameof(Screens))]
    public async Task SignInPage_EveryScreen_IsUsable(string screen) =>
        await stage.VisitAsync(Screen.Named(screen), async visit =>
        {
            await visit.OpenStaticAsync("sign-in");

            await visit.UsableAsync();
            await visit.PictureAsync("sign-in");
        });
}
