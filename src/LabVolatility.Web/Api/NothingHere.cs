using Microsoft.AspNetCore.Routing.Template;

namespace LabVolatility.Web.Api;

/// <summary>Answers addresses that the interface does not have, and methods that an address does not take.</summary>
internal static class NothingHere
{
    public static IResult Answer(HttpContext http, EndpointDataSource endpoints)
    {
        var allowed = endpoints.Endpoints.OfType<RouteEndpoint>()
            .Where(e => e.Metadata.GetMetadata<HttpMethodMetadata>() is not null && Fits(e, http.Request.Path))
            .SelectMany(e => e.Metadata.GetMetadata<HttpMethodMetadata>()!.HttpMethods).Distinct().Order(StringComparer.Ordinal).ToList();
        if (allowed.Count == 0)
            return ProblemAnswer.Of(StatusCodes.Status404NotFound, "There is nothing at this address; /openapi/v1.json lists what there is.");
        http.Response.Headers.Allow = string.Join(", ", allowed);
        return ProblemAnswer.Of(StatusCodes.Status405MethodNotAllowed, $"This address takes {string.Join(", ", allowed)}.");
    }

    private static bool Fits(RouteEndpoint endpoint, PathString path) =>
        endpoint.RoutePattern.RawText is { } pattern
        && pattern.TrimStart('/').StartsWith("api/v1", StringComparison.Ordinal)
        && new TemplateMatcher(TemplateParser.Parse(pattern.TrimStart('/')), []).TryMatch(path, []);
}
