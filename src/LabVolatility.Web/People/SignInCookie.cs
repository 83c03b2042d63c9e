using LabVolatility.Web.Layout;
using LabVolatility.Web.Setup;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Identity;

namespace LabVolatility.Web.People;

/// <summary>The sign-in cookie: bound to this host, unseen by scripts, checked against the account on each request.</summary>
internal static class SignInCookie
{
    public const string ReturnParameter = "return";

    public static void Configure(CookieAuthenticationOptions options, WebSettings settings)
    {
        options.Cookie.Name = settings.CookiesWithoutTls ? "labvolatility" : "__Host-labvolatility";
        options.Cookie.SecurePolicy = settings.CookiesWithoutTls ? CookieSecurePolicy.SameAsRequest : CookieSecurePolicy.Always;
        options.Cookie.SameSite = SameSiteMode.Lax;
        options.Cookie.HttpOnly = true;
        options.Cookie.Path = "/";
        options.ExpireTimeSpan = SessionTimes.Idle;
        options.SlidingExpiration = true;
        options.LoginPath = "/sign-in";
        options.ReturnUrlParameter = ReturnParameter;
        options.Events.OnValidatePrincipal = ValidateAsync;
        options.Events.OnRedirectToLogin = RedirectToLogin;
        options.Events.OnRedirectToAccessDenied = context =>
        {
            context.Response.StatusCode = StatusCodes.Status403Forbidden;
            return Task.CompletedTask;
        };
    }

    private static async Task ValidateAsync(CookieValidatePrincipalContext context)
    {
        var check = context.HttpContext.RequestServices.GetRequiredService<SessionCheck>();
        if (await check.RunAsync(context.Principal!, context.HttpContext.RequestAborted) is null)
            return;
        context.RejectPrincipal();
        await context.HttpContext.SignOutAsync(IdentityConstants.ApplicationScheme);
    }

    private static Task RedirectToLogin(RedirectContext<CookieAuthenticationOptions> context)
    {
        if (ErrorAnswers.IsForProgram(context.HttpContext) || context.Request.Path.StartsWithSegments("/_blazor"))
            context.Response.StatusCode = StatusCodes.Status401Unauthorized;
        else
            context.Response.Redirect(context.RedirectUri);
        return Task.CompletedTask;
    }
}
