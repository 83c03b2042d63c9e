using LabVolatility.Web.People;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Layout;

/// <summary>Covers a page whose session has ended; the typing below it stays.</summary>
public sealed partial class SessionEnded : ComponentBase, IDisposable
{
    [Inject]
    private CircuitSession Session { get; set; } = null!;

    [Inject]
    private NavigationManager Addresses { get; set; } = null!;

    private string Door => $"/sign-in?{SignInCookie.ReturnParameter}={Uri.EscapeDataString('/' + Addresses.ToBaseRelativePath(Addresses.Uri))}";

    public void Dispose() => Session.Changed -= Redraw;

    protected override void OnInitialized() => Session.Changed += Redraw;

    private static string Words(SessionEnd why) => why switch
    {
        SessionEnd.Idle => "Nothing was done for 30 minutes.",
        SessionEnd.TooLong => "A sign-in lasts 12 hours at most.",
        _ => "You signed out elsewhere, or your password, roles or account were changed.",
    };

    private void Redraw() => _ = InvokeAsync(StateHasChanged);
}
