using System.Threading.RateLimiting;
using LabVolatility.Laboratory.Certificates;
using LabVolatility.Laboratory.People;
using Microsoft.AspNetCore.RateLimiting;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace LabVolatility.Web.Certificates;

/// <summary>Certificates as documents: a copy to be looked at, with a stamp where it is no longer in force.</summary>
public static class CertificateEndpoints
{
    /// <summary>How often an address may ask for a check code: guessing is slow.</summary>
    public const string CheckLimit = "certificate-check-page";

    private const int ChecksPerMinute = 20;

    public static void AddCertificates(this IServiceCollection services)
    {
        services.TryAddTransient<ReadCertificates>();
        services.Configure<RateLimiterOptions>(options => options.AddPolicy(CheckLimit, http => RateLimitPartition.GetFixedWindowLimiter(
            http.Connection.RemoteIpAddress?.ToString() ?? "unknown",
            _ => new FixedWindowRateLimiterOptions { PermitLimit = ChecksPerMinute, Window = TimeSpan.FromMinutes(1), QueueLimit = 0 })));
    }

    public static void MapCertificates(this WebApplication app)
    {
        app.MapGet("/certificates/{number}.pdf", async (HttpContext http, ReadCertificateCopy read, string number, int? revision) =>
            Copy(http, await read.Run(number, revision, http.RequestAborted))).RequireAuthorization(nameof(Right.Read));
        app.MapGet("/batches/{number}/certificate.pdf", async (HttpContext http, ReadCertificateCopy read, string number) =>
            Copy(http, await read.OfBatch(number, http.RequestAborted))).RequireAuthorization(nameof(Right.Read));
    }

    private static IResult Copy(HttpContext http, ReadCertificateCopy.Copy? copy)
    {
        if (copy is null)
            return Results.NotFound();
        http.Response.Headers.ContentDisposition = $"inline; filename=\"{copy.Number}-{copy.Revision}.pdf\"";
        return Results.Bytes(copy.Pdf, "application/pdf");
    }
}
