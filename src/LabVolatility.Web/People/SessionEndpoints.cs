using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc;

namespace LabVolatility.Web.People;

/// <summary>Keeps a session alive while somebody works in it, renews an open page, hands out the key to its typing, and signs out.</summary>
public static class SessionEndpoints
{
    /// <summary>Sent by our own script only: a form of another site can't set it.</summary>
    private const string OwnHeader = "X-Lab-Page";

    public static void MapSessions(this IEndpointRouteBuilder app)
    {
        app.MapPost("/session/keep", Keep);
        app.MapPost("/session/typing-key", TypingKey);
        app.MapPost("/session/renew", Renew);
        app.MapPost("/sign-out", SignOutAsync).AllowAnonymous();
    }

    private static IResult Keep(HttpContext http, OpenSessions open, [FromHeader(Name = "X-Lab-Session")] string? token)
    {
        if (!IsOwn(http))
            return Results.BadRequest();
        if (token is not null)
            open.Find(token)?.Touch(http.User);
        return Results.NoContent();
    }

    private static IResult TypingKey(HttpContext http, TypingKeys keys, [FromHeader(Name = "X-Lab-Envelope")] string? envelope) =>
        IsOwn(http) && PersonClaims.IdOf(http.User) is { } person ? Results.Json(keys.Run(person, envelope)) : Results.BadRequest();

    private static IResult Renew(HttpContext http, OpenSessions open, [FromHeader(Name = OwnHeader)] string? token) =>
        token is not null && open.Find(token) is { } session && session.TryRenew(http.User) ? Results.NoContent() : Results.Conflict();

    // The form value switches the antiforgery check on.
    private static async Task<IResult> SignOutAsync(HttpContext http, [FromForm] string? leave, SessionCheck sessions, ILogger<CircuitSession> log)
    {
        _ = leave;
        if (PersonClaims.IdOf(http.User) is { } id)
            log.LogInformation("Signed out: account {PersonId}", id);
        sessions.SignOut(http.User);
        await http.SignOutAsync(IdentityConstants.ApplicationScheme);
        http.Response.Headers["Clear-Site-Data"] = "\"cache\"";
        return Results.LocalRedirect("/sign-in");
    }

    private static bool IsOwn(HttpContext http) => http.Request.Headers.ContainsKey(OwnHeader);
}
