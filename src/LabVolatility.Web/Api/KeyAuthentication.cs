using System.Security.Claims;
using System.Text.Encodings.Web;
using LabVolatility.Laboratory.Setup;
using Microsoft.AspNetCore.Authentication;
using Microsoft.Extensions.Options;

namespace LabVolatility.Web.Api;

/// <summary>Signs a program in by the key in its Authorization header; never by the address or a cookie.</summary>
internal sealed class KeyAuthentication(
    IOptionsMonitor<AuthenticationSchemeOptions> options, ILoggerFactory logger, UrlEncoder encoder, InterfaceKeys keys)
    : AuthenticationHandler<AuthenticationSchemeOptions>(options, logger, encoder)
{
    public const string SchemeName = "InterfaceKey";
    public const string ScopeClaim = "scope";
    public const string KeyClaim = "key";
    private const string Prefix = "Bearer ";

    protected override async Task<AuthenticateResult> HandleAuthenticateAsync()
    {
        if (Request.Headers.Authorization is not [{ } header] || !header.StartsWith(Prefix, StringComparison.OrdinalIgnoreCase))
            return AuthenticateResult.NoResult();
        if (await keys.Find(header[Prefix.Length..].Trim(), Context.RequestAborted) is not { } holder)
            return AuthenticateResult.Fail("unknown, ended or revoked key");
        Context.Features.Set(holder);
        var claims = Enum.GetValues<KeyScopes>().Where(s => s != KeyScopes.None && holder.Opens(s)).Select(s => new Claim(ScopeClaim, ScopeWords.Text(s)))
            .Append(new Claim(KeyClaim, holder.KeyId.ToString())).Append(new Claim(ClaimTypes.NameIdentifier, holder.Actor.Id.ToString()));
        return AuthenticateResult.Success(new AuthenticationTicket(new ClaimsPrincipal(new ClaimsIdentity(claims, SchemeName)), SchemeName));
    }

    protected override Task HandleChallengeAsync(AuthenticationProperties properties)
    {
        Response.Headers.WWWAuthenticate = "Bearer";
        return ProblemAnswer.WriteAsync(Context, StatusCodes.Status401Unauthorized,
            "Send a key that is in force: Authorization: Bearer KEY. An administrator makes keys.");
    }

    protected override Task HandleForbiddenAsync(AuthenticationProperties properties)
    {
        var wanted = Context.GetEndpoint()?.Metadata.GetMetadata<KeyScopeNeeded>()?.Scope ?? KeyScopes.None;
        return ProblemAnswer.WriteAsync(Context, StatusCodes.Status403Forbidden,
            $"The key does not have the scope {ScopeWords.Text(wanted)}. An administrator makes keys.");
    }
}
