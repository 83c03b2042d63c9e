using LabVolatility.Laboratory.People;

namespace LabVolatility.Web.Layout;

/// <summary>What a person gave to sign an act with; the act itself checks the password, once.</summary>
/// <param name="Actor">Who signs, with the roles held at that moment.</param>
/// <param name="Reason">The reason as typed, trimmed; null where none was given.</param>
/// <param name="Password">The password as typed.</param>
public sealed record Signature(Actor Actor, string? Reason, string Password)
{
    // A record prints its members: the password must not reach a log that way.
    public override string ToString() => $"Signature of {Actor.Name}";
}
