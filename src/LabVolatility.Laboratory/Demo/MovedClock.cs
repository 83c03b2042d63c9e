namespace LabVolatility.Laboratory.Demo;

/// <summary>A clock that stands where it was put: the demo's past is made at the times it tells of.</summary>
internal sealed class MovedClock(DateTimeOffset now) : TimeProvider
{
    private DateTimeOffset _now = now.ToUniversalTime();

    public override DateTimeOffset GetUtcNow() => _now;

    /// <exception cref="InvalidOperationException">It would run backwards.</exception>
    public void MoveTo(DateTimeOffset now)
    {
        if (now < _now)
            throw new InvalidOperationException($"The demo's clock would run back from {_now:O} to {now:O}.");
        _now = now.ToUniversalTime();
    }
}
