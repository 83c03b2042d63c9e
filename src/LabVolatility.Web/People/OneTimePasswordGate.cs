namespace LabVolatility.Web.People;

/// <summary>Whoever came in by a one-time password sets an own one before anything else.</summary>
public static class OneTimePasswordGate
{
    public static void UseOneTimePasswordGate(this IApplicationBuilder app) => app.Use((http, next) =>
    {
        if (!PersonClaims.HasOneTimePassword(http.User) || IsOpen(http.Request.Path))
            return next(http);
        if (HttpMethods.IsGet(http.Request.Method) && !http.Request.Path.StartsWithSegments("/_blazor"))
            http.Response.Redirect("/account");
        else
            http.Response.StatusCode = StatusCodes.Status403Forbidden;
        return Task.CompletedTask;
    });

    private static bool IsOpen(PathString path) =>
        path.StartsWithSegments("/account") || path.StartsWithSegments("/sign-out") || path.StartsWithSegments("/sign-in") || path.StartsWithSegments("/health");
}
