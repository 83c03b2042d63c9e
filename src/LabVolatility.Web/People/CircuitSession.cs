using System.Security.Claims;
using System.Security.Cryptography;

namespace LabVolatility.Web.People;

/// <summary>The session of one open page: it outlives its cookie, so it is checked on its own.</summary>
public sealed class CircuitSession(SessionCheck check, TimeProvider clock)
{
    private static readonly TimeSpan DrawnWithin = TimeSpan.FromSeconds(2);

    private ClaimsPrincipal _user = new();
    private DateTimeOffset _lastDeed;
    private DateTimeOffset _drawnUnasked;

    /// <summary>Raised when the session has ended, or was renewed.</summary>
    public event Action? Changed;

    /// <summary>Finds this page's log lines.</summary>
    public string Reference { get; } = Records.Reference.Make();

    /// <summary>Names this page to the renewal endpoint; of no use without a new sign-in of the same person.</summary>
    public string Token { get; } = RandomNumberGenerator.GetHexString(32);

    /// <summary>Why it ended; null while it holds.</summary>
    public SessionEnd? Ended { get; private set; }

    /// <summary>The page draws what somebody else changed: what the browser sends back for that is no deed.</summary>
    public void DrawsUnasked() => _drawnUnasked = clock.GetUtcNow();

    /// <summary>The browser sent something: a deed, unless it only says that it has drawn.</summary>
    public void Hear()
    {
        if (clock.GetUtcNow() - _drawnUnasked > DrawnWithin)
            Touch();
    }

    public void Begin(ClaimsPrincipal user)
    {
        _user = user;
        _lastDeed = clock.GetUtcNow();
    }

    /// <summary>Something the person did: it counts against the idle time.</summary>
    public void Touch() => _lastDeed = clock.GetUtcNow();

    /// <summary>The same, said by the page itself, for the person it belongs to.</summary>
    public void Touch(ClaimsPrincipal user)
    {
        if (Ended is null && PersonClaims.IdOf(_user) is { } id && PersonClaims.IdOf(user) == id)
            Touch();
    }

    /// <summary>True while the session holds; looks at the clock and the account.</summary>
    public async Task<bool> HoldsAsync()
    {
        if (Ended is not null)
            return false;
        var end = clock.GetUtcNow() - _lastDeed > SessionTimes.Idle
            ? SessionEnd.Idle
            : await check.RunAsync(_user);
        if (end is null)
            return true;
        Ended = end;
        Changed?.Invoke();
        return false;
    }

    /// <summary>Goes on after the same person has signed in again, with all that was typed.</summary>
    public bool TryRenew(ClaimsPrincipal user)
    {
        if (PersonClaims.IdOf(_user) is not { } id || PersonClaims.IdOf(user) != id || PersonClaims.HasOneTimePassword(user))
            return false;
        Begin(user);
        Ended = null;
        Changed?.Invoke();
        return true;
    }
}
