using LabVolatility.Laboratory.People;

namespace LabVolatility.Laboratory.Setup;

/// <summary>A key that was shown and is good: who acts, and what it opens.</summary>
/// <param name="KeyId">Empty for the demo's key, which is in no table.</param>
public sealed record KeyHolder(Guid KeyId, string Name, KeyScopes Scopes, Actor Actor)
{
    public bool Opens(KeyScopes scope) => Scopes.HasFlag(scope);
}
