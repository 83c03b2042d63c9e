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

    public bool MaySign(Guid personId)
    {
        using var lease = _signature.AttemptAcquire(personId.ToString());
        return lease.IsAcquired;
    }

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
