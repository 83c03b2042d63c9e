using LabVolatility.Web.Records;
using MudBlazor.Services;

namespace LabVolatility.Web.Layout;

/// <summary>What the pages need to be drawn.</summary>
public static class ShellServices
{
    private const int CallSeconds = 10;
    private const int HeartbeatSeconds = 5;

    public static void AddShell(this IServiceCollection services)
    {
        services.AddRazorComponents(options => options.MaxFormMappingCollectionSize = 100)
            .AddInteractiveServerComponents(options => options.JSInteropDefaultCallTimeout = TimeSpan.FromSeconds(CallSeconds))
            // The page counts a line without a heartbeat as dead: see line.js.
            .AddHubOptions(hub => hub.KeepAliveInterval = TimeSpan.FromSeconds(HeartbeatSeconds));
        services.AddMudServices();
        services.AddSingleton<LabClock>();
        services.AddScoped<Browser>();
        services.AddProblemDetails(options => options.CustomizeProblemDetails = context =>
            context.ProblemDetails.Extensions["reference"] = Reference.Of(context.HttpContext));
    }

    public static void MapShell(this WebApplication app)
    {
        app.MapStaticAssets().AllowAnonymous().ShortCircuit();
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode(options =>
        {
            // Secrets and other people's words share a screen: no compression over them. The policy header is our own.
            options.DisableWebSocketCompression = true;
            options.ContentSecurityFrameAncestorsPolicy = null;
        });
        app.MapGet("/", (HttpContext http) => Results.LocalRedirect(Places.LandingOf(People.PersonClaims.RolesOf(http.User))));
    }
}
