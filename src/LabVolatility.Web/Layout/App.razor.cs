using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Routing;
using Microsoft.AspNetCore.Components.Web;

namespace LabVolatility.Web.Layout;

/// <summary>The document: static for the account pages, a circuit for all others, never prerendered.</summary>
public sealed partial class App : ComponentBase
{
    private const string ThemeCookie = "labvolatility-theme";

    [CascadingParameter]
    private HttpContext Http { get; set; } = null!;

    private bool Interactive => Http.AcceptsInteractiveRouting();

    // What is typed into a prerendered page before its circuit is up would be lost.
    private IComponentRenderMode? Mode => Interactive ? new InteractiveServerRenderMode(prerender: false) : null;

    private string? Theme => Http.Request.Cookies[ThemeCookie] is "light" or "dark" ? Http.Request.Cookies[ThemeCookie] : null;
}
