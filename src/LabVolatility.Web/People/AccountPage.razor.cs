using LabVolatility.Laboratory.People;
using LabVolatility.Web.Setup;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.People;

/// <summary>The person's own account: password and theme.</summary>
public sealed partial class AccountPage : ComponentBase
{
    private static readonly (string Value, string Words)[] Themes =
        [("system", "as the system is set"), ("light", "light"), ("dark", "dark, for the night")];

    private AccountFacts? _account;
    private string? _problem;
    private string? _done;

    [SupplyParameterFromForm]
    private AccountEntry? Entry { get; set; }

    [CascadingParameter]
    private HttpContext Http { get; set; } = null!;

    [Inject]
    private ReadAccount Read { get; set; } = null!;

    [Inject]
    private ChangePassword Change { get; set; } = null!;

    [Inject]
    private ChangeTheme Taste { get; set; } = null!;

    [Inject]
    private SignIn Door { get; set; } = null!;

    [Inject]
    private SessionCheck Sessions { get; set; } = null!;

    [Inject]
    private TryLimits Limits { get; set; } = null!;

    [Inject]
    private LaboratoryFacts Facts { get; set; } = null!;

    protected override Task OnInitializedAsync() => ReadAsync();

    private async Task ReadAsync() =>
        _account = PersonClaims.IdOf(Http.User) is { } id ? await Read.Run(id, Http.RequestAborted) : null;

    private async Task ChangePasswordAsync()
    {
        if (_account is null)
            return;
        _problem = await ProblemAsync(_account.Id);
        if (_problem is not null)
            return;
        var changed = await Change.Run(_account.Id, Entry?.NewPassword ?? "");
        if (changed.Value is not { } person)
        {
            _problem = changed.Text;
            return;
        }

        Sessions.Forget(person.Id);
        await Door.OpenAsync(Http, person);
        _done = "The password is changed. Other sessions of yours have ended.";
        await ReadAsync();
    }

    private async Task<string?> ProblemAsync(Guid id)
    {
        if (Entry?.NewPassword != Entry?.Again)
            return "The new password was not typed the same twice.";
        if (!Limits.MaySign(id))
            return "Too many tries: wait a minute.";
        if (await Door.IsPasswordAsync(id, Entry?.Password))
            return null;
        Limits.CountWrongSignature(id);
        return "The password you have now is another one.";
    }

    private async Task ChangeThemeAsync()
    {
        if (_account is null)
            return;
        await Taste.Run(_account.Id, Entry?.Theme is "light" or "dark" ? Entry.Theme : null);
        _done = "Kept: it shows when you open the laboratory.";
        await ReadAsync();
    }
}
