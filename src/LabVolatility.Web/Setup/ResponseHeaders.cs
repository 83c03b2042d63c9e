namespace LabVolatility.Web.Setup;

/// <summary>What every answer tells the browser it may do.</summary>
public static class ResponseHeaders
{
    // 'unsafe-inline' for styles only: components write style attributes. base-uri 'self': a page needs a base element.
    private const string ContentPolicy =
        "default-src 'self'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; font-src 'self'; "
        + "connect-src 'self'; object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    public static void UseResponseHeaders(this IApplicationBuilder app) => app.Use((http, next) =>
    {
        http.Response.OnStarting(Write, http);
        return next(http);
    });

    private static Task Write(object state)
    {
        var http = (HttpContext)state;
        var headers = http.Response.Headers;
        headers.ContentSecurityPolicy = ContentPolicy;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Permissions-Policy"] = "camera=(), microphone=(), geolocation=(), payment=(), usb=()";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        if (!IsAsset(http))
            headers.CacheControl = "no-store";
        return Task.CompletedTask;
    }

    // Style sheets, scripts and fonts are the same for everybody; all else may say something about somebody.
    private static bool IsAsset(HttpContext http) =>
        http.GetEndpoint()?.Metadata.GetMetadata<Microsoft.AspNetCore.StaticAssets.StaticAssetDescriptor>() is not null;
}
