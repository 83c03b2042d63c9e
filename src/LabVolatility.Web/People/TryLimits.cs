using System.Threading.RateLimiting;

namespace LabVolatility.Web.People;

/// <summary>How often somebody may try a secret: by address for sign-in, by account for sign-in and signature.</summary>
public sealed class TryLimits : IDisposable
{
    public const string ByAddress = "tries-by-address";

    private readonly PartitionedRateLimiter<string> _signIn = PerMinute(5);
    private readonly PartitionedRateLimiter<string> _signature = PerMinute(5);

    public bool MaySignIn(string account)
    {
        using var lease = _signIn.AttemptAcquire(account.ToUpperInvariant());
        return lease.IsAcquired;
    }

    /// <summary>Whether a wrong password is still allowed this minute; a right one costs nothing, however many batches wait.</summary>
    public bool MaySign(Guid personId)
    {
        using var lease = _signature.AttemptAcquire(personId.ToString(), 0);
        return lease.IsAcquired;
    }

    public void CountWrongSignature(Guid personId) => _signature.AttemptAcquire(personId.ToString()).Dispose();

    public void Dispose()
    {
        _signIn.Dispose();
        _signature.Dispose();
    }

    private static PartitionedRateLimiter<string> PerMinute(int tries) => PartitionedRateLimiter.Create<string, string>(key =>
        RateLimitPartition.GetFixedWindowLimiter(key, _ => new FixedWindowRateLimiterOptions
        {
            PermitLimit = tries,
            Window = TimeSpan.FromMinutes(1),
            QueueLimit = 0,
        }));
}
