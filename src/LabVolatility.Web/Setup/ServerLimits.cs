using System.Net;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.HostFiltering;
using Microsoft.AspNetCore.HttpOverrides;

namespace LabVolatility.Web.Setup;

/// <summary>How much the server takes, from whom, and what it tells of itself.</summary>
public static class ServerLimits
{
    private const int Mebibyte = 1024 * 1024;
    private const int DaysOfStrictTransport = 365;

    public static void AddServerLimits(this WebApplicationBuilder builder, WebSettings settings)
    {
        if (string.IsNullOrWhiteSpace(builder.Configuration[WebHostDefaults.ServerUrlsKey]))
            builder.WebHost.UseUrls(WebSettings.DefaultAddress);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = Mebibyte;
        });
        builder.Services.Configure<FormOptions>(form =>
        {
            form.ValueCountLimit = 100;
            form.ValueLengthLimit = 64 * 1024;
            form.MultipartBodyLengthLimit = Mebibyte;
        });
        builder.Services.AddHsts(hsts =>
        {
            hsts.MaxAge = TimeSpan.FromDays(DaysOfStrictTransport);
            hsts.IncludeSubDomains = true;
        });
        builder.Services.Configure<ForwardedHeadersOptions>(forwarded =>
        {
            forwarded.ForwardedHeaders = ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto;
            foreach (var proxy in settings.Proxies)
                forwarded.KnownProxies.Add(proxy);
        });

        // A name that points to this machine must not make the demo somebody else's.
        if (settings.Demo)
            builder.Services.PostConfigure<HostFilteringOptions>(hosts => hosts.AllowedHosts = ["localhost", IPAddress.Loopback.ToString(), "[::1]"]);
    }
}
