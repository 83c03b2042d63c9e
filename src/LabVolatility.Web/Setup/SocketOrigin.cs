namespace LabVolatility.Web.Setup;

/// <summary>A page of another site must not open a socket to us: no cross-origin rule of the browser covers sockets.</summary>
public static class SocketOrigin
{
    public static void UseSocketOrigin(this IApplicationBuilder app) => app.Use((http, next) =>
    {
        if (!http.Request.Path.StartsWithSegments("/_blazor") || IsOwn(http.Request))
            return next(http);
        http.Response.StatusCode = StatusCodes.Status403Forbidden;
        return Task.CompletedTask;
    });

    private static bool IsOwn(HttpRequest request)
    {
        var origin = request.Headers.Origin.ToString();
        return origin.Length == 0
            ? !request.HttpContext.WebSockets.IsWebSocketRequest
            : string.Equals(origin, $"{request.Scheme}://{request.Host}", StringComparison.OrdinalIgnoreCase);
    }
}
