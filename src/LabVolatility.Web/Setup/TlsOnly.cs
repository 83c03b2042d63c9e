using System.Net;
using LabVolatility.Web.Layout;

namespace LabVolatility.Web.Setup;

/// <summary>Outside demo mode pages come over TLS, by the server's own certificate or a proxy's; sign-in cookies travel no other way.</summary>
public static class TlsOnly
{
    public static void UseTlsOnly(this IApplicationBuilder app) => app.Use((http, next) =>
    {
        if (http.Request.IsHttps || http.Request.Path.StartsWithSegments("/health") || IsProgramOnThisMachine(http))
            return next(http);
        return PlainPage.WriteAsync(http, StatusCodes.Status400BadRequest, "This laboratory is served over HTTPS",
            "Sign-in cookies are never sent unencrypted. Open the address that begins with https.",
            "For the administrator: put a TLS proxy in front that sends X-Forwarded-Proto, or give the server a certificate; the README says how.");
    });

    private static bool IsProgramOnThisMachine(HttpContext http) =>
        http.Request.Path.StartsWithSegments("/api") && http.Connection.RemoteIpAddress is { } from && IPAddress.IsLoopback(from);
}
