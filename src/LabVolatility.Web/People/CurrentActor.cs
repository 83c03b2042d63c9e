using System.Security.Claims;
using LabVolatility.Laboratory.People;
using Microsoft.AspNetCore.Components.Authorization;

namespace LabVolatility.Web.People;

/// <summary>Who acts on this page, with the roles held now in the database.</summary>
public sealed class CurrentActor(AuthenticationStateProvider authentication, FindActor find, CircuitSession session)
{
    /// <summary>Acts for nobody: may nothing.</summary>
    public static Actor Nobody { get; } = new(Guid.Empty, "nobody", Roles.None, "page");

    /// <summary>The person on this page; nobody once the session has ended.</summary>
    public async Task<Actor> GetAsync(CancellationToken cancellationToken = default)
    {
        if (session.Ended is not null)
            return Nobody;
        var state = await authentication.GetAuthenticationStateAsync();
        return await OfAsync(state.User, cancellationToken);
    }

    /// <summary>The person behind a request, for endpoints such as downloads.</summary>
    public async Task<Actor> OfAsync(ClaimsPrincipal user, CancellationToken cancellationToken = default) =>
        PersonClaims.IdOf(user) is { } id ? await find.Run(id, "page", cancellationToken) ?? Nobody : Nobody;
}
