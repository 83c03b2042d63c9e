using System.Threading.RateLimiting;
using LabVolatility.Web.People;

namespace LabVolatility.Web.Setup;

/// <summary>Limits that hold before anything is looked at.</summary>
public static class RateLimits
{
    private const int TriesPerMinute = 20;

    public static void AddRateLimits(this IServiceCollection services) => services.AddRateLimiter(options =>
    {
        options.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
        options.OnRejected = (context, _) =>
        {
            context.HttpContext.Response.Headers.RetryAfter = "60";
            return ValueTask.CompletedTask;
        };
        options.AddPolicy(TryLimits.ByAddress, http => HttpMethods.IsPost(http.Request.Method)
            ? RateLimitPartition.GetFixedWindowLimiter(Address(http), _ => new FixedWindowRateLimiterOptions
            {
                PermitLimit = TriesPerMinute,
                Window = TimeSpan.FromMinutes(1),
                QueueLimit = 0,
            })
            : RateLimitPartition.GetNoLimiter(""));
    });

    private static string Address(HttpContext http) => http.Connection.RemoteIpAddress?.ToString() ?? "unknown";
}
