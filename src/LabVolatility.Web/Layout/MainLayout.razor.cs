using LabVolatility.Laboratory.People;
using LabVolatility.Web.People;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Authorization;

namespace LabVolatility.Web.Layout;

/// <summary>The rail on top, the page below, the session's end over both.</summary>
public sealed partial class MainLayout : LayoutComponentBase
{
    private bool _dark;
    private AccountFacts? _account;
    private FaultBoundary? _boundary;

    [Inject]
    private AuthenticationStateProvider Authentication { get; set; } = null!;

    [Inject]
    private ReadAccount Read { get; set; } = null!;

    [Inject]
    private ChangeTheme Change { get; set; } = null!;

    [Inject]
    private Browser Browser { get; set; } = null!;

    protected override async Task OnInitializedAsync()
    {
        var state = await Authentication.GetAuthenticationStateAsync();
        if (PersonClaims.IdOf(state.User) is { } id)
            _account = await Read.Run(id);
        _dark = _account?.Theme == "dark";
    }

    protected override void OnParametersSet() => _boundary?.Recover();

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender)
            return;
        await Browser.ThemeAsync(_account?.Theme);
        if (_account?.Theme is null && await Browser.PrefersDarkAsync())
        {
            _dark = true;
            StateHasChanged();
        }
    }

    private async Task ChooseThemeAsync(string? theme)
    {
        if (_account is null)
            return;
        await Change.Run(_account.Id, theme);
        _account = _account with { Theme = theme };
        _dark = theme == "dark";
        await Browser.ThemeAsync(theme);
    }
}
