using System.Globalization;
using System.Security.Claims;
using System.Security.Cryptography;
using LabVolatility.Laboratory.People;
using Microsoft.AspNetCore.Identity;

namespace LabVolatility.Web.People;

/// <summary>What a sign-in cookie says: who, since when, under which stamp. Roles in it steer what is shown, never what is done.</summary>
public static class PersonClaims
{
    private const string SignedInAt = "lab:signed-in-at";
    private const string Stamp = "lab:stamp";
    private const string Session = "lab:session";
    private const string MustChangePassword = "lab:one-time";

    public static ClaimsPrincipal Make(Person person, DateTimeOffset now)
    {
        var claims = new List<Claim>
        {
            new(ClaimTypes.NameIdentifier, person.Id.ToString("D", CultureInfo.InvariantCulture)),
            new(ClaimTypes.Name, person.FullName),
            new(SignedInAt, now.ToUnixTimeSeconds().ToString(CultureInfo.InvariantCulture)),
            new(Stamp, person.SecurityStamp ?? ""),
            new(Session, RandomNumberGenerator.GetHexString(32)),
        };
        claims.AddRange(RoleNames.Of(person.Roles).Select(r => new Claim(ClaimTypes.Role, r)));
        if (person.PasswordSetAt is null)
            claims.Add(new Claim(MustChangePassword, "yes"));
        return new ClaimsPrincipal(new ClaimsIdentity(claims, IdentityConstants.ApplicationScheme));
    }

    public static Guid? IdOf(ClaimsPrincipal user) =>
        Guid.TryParse(user.FindFirstValue(ClaimTypes.NameIdentifier), out var id) ? id : null;

    public static string? StampOf(ClaimsPrincipal user) => user.FindFirstValue(Stamp);

    /// <summary>Names this one sign-in.</summary>
    public static string SessionOf(ClaimsPrincipal user) => user.FindFirstValue(Session) ?? "";

    public static bool HasOneTimePassword(ClaimsPrincipal user) => user.HasClaim(MustChangePassword, "yes");

    public static DateTimeOffset SignedInAtOf(ClaimsPrincipal user) =>
        long.TryParse(user.FindFirstValue(SignedInAt), NumberStyles.None, CultureInfo.InvariantCulture, out var seconds)
            ? DateTimeOffset.FromUnixTimeSeconds(seconds)
            : DateTimeOffset.MinValue;

    public static Roles RolesOf(ClaimsPrincipal user) =>
        RoleNames.All.Where(r => user.IsInRole(r.Name)).Aggregate(Roles.None, (held, r) => held | r.Role);
}
