using System.Collections.Concurrent;
using System.Security.Claims;
using LabVolatility.Laboratory.People;

namespace LabVolatility.Web.People;

/// <summary>Whether a sign-in still holds: not signed out, not too old, and the account as it is now, to five seconds.</summary>
public sealed class SessionCheck(IServiceScopeFactory scopes, TimeProvider clock)
{
    private readonly ConcurrentDictionary<Guid, Look> _looks = new();
    private readonly ConcurrentDictionary<string, DateTimeOffset> _signedOut = new();

    /// <summary>Null while the session holds.</summary>
    public async Task<SessionEnd?> RunAsync(ClaimsPrincipal user, CancellationToken cancellationToken = default)
    {
        if (clock.GetUtcNow() - PersonClaims.SignedInAtOf(user) > SessionTimes.Longest)
            return SessionEnd.TooLong;
        if (PersonClaims.IdOf(user) is not { } id || _signedOut.ContainsKey(PersonClaims.SessionOf(user)))
            return SessionEnd.AccountChanged;
        var facts = await LookAsync(id, cancellationToken);
        return facts is { Active: true } && facts.SecurityStamp == PersonClaims.StampOf(user) ? null : SessionEnd.AccountChanged;
    }

    /// <summary>Ends one sign-in for good: its cookie opens nothing any more, should it turn up again.</summary>
    public void SignOut(ClaimsPrincipal user)
    {
        var now = clock.GetUtcNow();
        foreach (var (session, at) in _signedOut)
        {
            if (now - at > SessionTimes.Longest)
                _signedOut.TryRemove(session, out _);
        }

        if (PersonClaims.SessionOf(user) is { Length: > 0 } ended)
            _signedOut[ended] = now;
    }

    /// <summary>Looks anew next time: what was known of this person has just changed here.</summary>
    public void Forget(Guid personId) => _looks.TryRemove(personId, out _);

    private async Task<SessionFacts?> LookAsync(Guid personId, CancellationToken cancellationToken)
    {
        var now = clock.GetUtcNow();
        if (_looks.TryGetValue(personId, out var known) && now - known.At < SessionTimes.Believed)
            return known.Facts;
        await using var scope = scopes.CreateAsyncScope();
        var facts = await scope.ServiceProvider.GetRequiredService<ReadSessionFacts>().Run(personId, cancellationToken);
        _looks[personId] = new Look(facts, now);
        return facts;
    }

    private sealed record Look(SessionFacts? Facts, DateTimeOffset At);
}
