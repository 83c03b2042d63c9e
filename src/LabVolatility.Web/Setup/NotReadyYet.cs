using LabVolatility.Web.Layout;

namespace LabVolatility.Web.Setup;

/// <summary>While the laboratory is being opened every page says so, counts, and comes back by itself.</summary>
public static class NotReadyYet
{
    private const int RefreshSeconds = 2;

    public static void UseNotReadyYet(this IApplicationBuilder app) => app.Use(async (http, next) =>
    {
        var readiness = http.RequestServices.GetRequiredService<Readiness>();
        if (readiness.Ready || http.Request.Path.StartsWithSegments("/health"))
        {
            await next(http);
            return;
        }

        http.Response.Headers.RetryAfter = "2";
        if (ErrorAnswers.IsForProgram(http))
        {
            await ErrorAnswers.WriteProblemAsync(http, StatusCodes.Status503ServiceUnavailable, readiness.Waits + ".");
            return;
        }

        var counted = readiness.Progress is { Total: > 0 } p ? $": {p.Done} of {p.Total}" : "";
        await PlainPage.WriteAsync(http, StatusCodes.Status503ServiceUnavailable, "The laboratory is being opened",
            [$"{readiness.Waits}{counted}.", "This page looks again every two seconds."], RefreshSeconds, readiness.Progress);
    });
}
