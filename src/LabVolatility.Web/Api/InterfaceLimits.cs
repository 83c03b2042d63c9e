using System.Threading.RateLimiting;
using Microsoft.AspNetCore.RateLimiting;

namespace LabVolatility.Web.Api;

/// <summary>How often a program may ask.</summary>
internal static class InterfaceLimits
{
    public const string ByKey = "interface-by-key";
    public const string CertificateCheck = "certificate-check";
    public const int ChecksPerMinute = 30;
    private const int Burst = 4000;
    private const int PerSecond = 400;

    public static void Add(RateLimiterOptions options)
    {
        options.AddPolicy(ByKey, http => RateLimitPartition.GetTokenBucketLimiter(Caller(http), _ => new TokenBucketRateLimiterOptions
        {
            TokenLimit = Burst,
            TokensPerPeriod = PerSecond,
            ReplenishmentPeriod = TimeSpan.FromSeconds(1),
            QueueLimit = 0,
        }));
        options.AddPolicy(CertificateCheck, http => RateLimitPartition.GetFixedWindowLimiter(Address(http), _ => new FixedWindowRateLimiterOptions
        {
            PermitLimit = ChecksPerMinute,
            Window = TimeSpan.FromMinutes(1),
            QueueLimit = 0,
        }));
    }

    // Where the limiter runs before the key is looked at, all programs of one address share a bucket.
    private static string Caller(HttpContext http) =>
        http.User.FindFirst(KeyAuthentication.KeyClaim)?.Value ?? Address(http);

    private static string Address(HttpContext http) => http.Connection.RemoteIpAddress?.ToString() ?? "unknown";
}
