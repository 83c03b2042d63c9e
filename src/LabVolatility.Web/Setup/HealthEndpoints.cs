using LabVolatility.Laboratory.Setup;

namespace LabVolatility.Web.Setup;

/// <summary>Whether the program lives, and whether it may be used; neither needs a key.</summary>
public static class HealthEndpoints
{
    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(3);

    public static void MapHealth(this IEndpointRouteBuilder app)
    {
        app.MapGet("/health/live", () => Results.Json(new { live = true })).AllowAnonymous();
        app.MapGet("/health/ready", ReadyAsync).AllowAnonymous();
    }

    private static async Task<IResult> ReadyAsync(Readiness readiness, ReadSettings read, ILogger<Readiness> log, HttpContext http)
    {
        if (!readiness.Ready)
            return NotReady(readiness.Waits, readiness.Progress);
        try
        {
            using var wait = CancellationTokenSource.CreateLinkedTokenSource(http.RequestAborted);
            wait.CancelAfter(LongestWait);
            return await read.Run(wait.Token) is null
                ? NotReady("The database holds no laboratory", null)
                : Results.Json(new { ready = true });
        }
        catch (Exception away) when (!http.RequestAborted.IsCancellationRequested)
        {
            log.LogWarning(away, "Not ready: the database does not answer");
            return NotReady("The database does not answer", null);
        }
    }

    private static IResult NotReady(string reason, StartupProgress? progress) => Results.Json(
        new { ready = false, reason, done = progress?.Done, total = progress?.Total },
        statusCode: StatusCodes.Status503ServiceUnavailable);
}
