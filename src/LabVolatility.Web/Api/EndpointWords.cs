using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Setup;
using Microsoft.AspNetCore.Http.Features;

namespace LabVolatility.Web.Api;

/// <summary>What each address of the interface declares about itself.</summary>
internal static class EndpointWords
{
    /// <summary>Opened by a key with this scope, and by nothing else.</summary>
    public static RouteHandlerBuilder Needs(this RouteHandlerBuilder endpoint, KeyScopes scope) => endpoint
        .WithMetadata(new KeyScopeNeeded(scope))
        .RequireRateLimiting(InterfaceLimits.ByKey)
        .RequireAuthorization(policy => policy
            .AddAuthenticationSchemes(KeyAuthentication.SchemeName).RequireClaim(KeyAuthentication.ScopeClaim, ScopeWords.Text(scope)));

    public static RouteHandlerBuilder Takes(this RouteHandlerBuilder endpoint, params IReadOnlyList<Shape> shapes) =>
        endpoint.WithMetadata(new BodyTaken(shapes));

    /// <summary>Takes a question behind the question mark.</summary>
    public static RouteHandlerBuilder Asks(this RouteHandlerBuilder endpoint, string name, string about, string? format = null) =>
        endpoint.WithMetadata(new QueryAsked(name, about, format));

    public static RouteHandlerBuilder Refuses(this RouteHandlerBuilder endpoint, params IReadOnlyList<int> statuses) =>
        endpoint.WithMetadata(new ProblemsGiven(statuses));

    public static RouteHandlerBuilder Called(this RouteHandlerBuilder endpoint, string name, string summary) =>
        endpoint.WithName(name).WithSummary(summary);

    /// <summary>Who acts: the owner of the key that was shown.</summary>
    public static Actor KeyActor(this HttpContext http) =>
        http.Features.GetRequiredFeature<KeyHolder>().Actor;
}
