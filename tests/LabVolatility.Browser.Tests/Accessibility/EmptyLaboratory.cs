using LabVolatility.Browser.Tests.Harness;
using Microsoft.Playwright;
using Xunit;

namespace LabVolatility.Browser.Tests.Accessibility;

/// <summary>A laboratory on its first day: no demo, over HTTPS, nothing in it but an administrator and a keeper of its work.</summary>
public sealed class EmptyLaboratory(Stage stage) : IAsyncLifetime
{
    private const string OwnPassword = "kettle-on-the-third-shelf";
    private PublishedApplication? _application;
    private string _administrator = "";
    private string _keeper = "";

    /// <summary>What was wrong with the pages that lead to the first account, while there was none.</summary>
    public IReadOnlyList<string> FaultsBeforeAnybody { get; private set; } = [];

    private PublishedApplication Application => _application ?? throw new InvalidOperationException("The laboratory is not running.");

    public async ValueTask InitializeAsync()
    {
        var cancellation = TestContext.Current.CancellationToken;
        _application = await PublishedApplication.StartEmptyAsync(cancellation);
        await VisitAsync(null, async visit => FaultsBeforeAnybody = await FaultsOfTheFirstDoorAsync(visit));
        var password = await _application.CommandAsync(["user", "add", "m.keller", "--role", "administrator"], cancellation);
        await VisitAsync(null, async visit => _administrator = await EnterAsync(visit, "m.keller", password));
        password = await _application.CommandAsync(["user", "add", "n.brook", "--role", "quality-manager"], cancellation);
        await VisitAsync(_administrator, visit => GiveRoleAsync(visit, "n.brook", "shift chemist"));
        await VisitAsync(null, async visit => _keeper = await EnterAsync(visit, "n.brook", password));
    }

    /// <summary>A visit by whoever may keep people and settings.</summary>
    public Task VisitAsAdministratorAsync(Func<Visit, Task> work) => VisitAsync(_administrator, work);

    /// <summary>A visit by whoever may do the laboratory's work.</summary>
    public Task VisitAsKeeperAsync(Func<Visit, Task> work) => VisitAsync(_keeper, work);

    /// <summary>A visit by nobody in particular.</summary>
    public Task VisitAsync(Func<Visit, Task> work) => VisitAsync(null, work);

    public async ValueTask DisposeAsync()
    {
        if (_application is not null)
            await _application.DisposeAsync();
    }

    private Task VisitAsync(string? storageState, Func<Visit, Task> work) => stage.VisitAsync(Application, Screen.Desk, storageState, work);

    private static async Task<IReadOnlyList<string>> FaultsOfTheFirstDoorAsync(Visit visit)
    {
        await visit.OpenStaticAsync("/sign-in");
        var faults = new List<string>(await visit.FaultsAsync());
        await visit.Page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Make the first one" }).ClickAsync();
        faults.AddRange(await visit.FaultsAsync());
        await visit.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Make the account" }).ClickAsync();
        await visit.Page.Locator(".summary").WaitForAsync();
        faults.AddRange(await visit.FaultsAsync());
        return faults;
    }

    // By the one-time password, which lets nobody further than to an own one.
    private static async Task<string> EnterAsync(Visit visit, string name, string oneTimePassword)
    {
        await visit.OpenStaticAsync("/sign-in");
        await visit.Page.GetByLabel("Sign-in name").FillAsync(name);
        await visit.Page.GetByLabel("Password").FillAsync(oneTimePassword);
        await visit.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Sign in" }).ClickAsync();
        await visit.Page.GetByLabel("Password now").FillAsync(oneTimePassword);
        await visit.Page.GetByLabel("New password", new PageGetByLabelOptions { Exact = true }).FillAsync(OwnPassword);
        await visit.Page.GetByLabel("New password again").FillAsync(OwnPassword);
        await visit.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Change password" }).ClickAsync();
        await visit.Page.GetByText("The password is changed").WaitForAsync();
        return await visit.Page.Context.StorageStateAsync();
    }

    private static async Task GiveRoleAsync(Visit visit, string name, string role)
    {
        await visit.OpenAsync("/setup/people");
        await visit.Page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = $"Change {name}" }).ClickAsync();
        await visit.Page.GetByLabel(role).CheckAsync();
        await visit.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Save name and roles" }).ClickAsync();
        await visit.Page.GetByRole(AriaRole.Status).Filter(new LocatorFilterOptions { HasText = "Saved" }).WaitForAsync();
    }
}
