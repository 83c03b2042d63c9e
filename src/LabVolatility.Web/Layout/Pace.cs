namespace LabVolatility.Web.Layout;

/// <summary>Does the same work for many requests: at once for the first, then at most once in a while, and once more for what was asked meanwhile.</summary>
public sealed class Pace(TimeProvider clock, TimeSpan between, Func<Task> work) : IDisposable
{
    private readonly Lock _gate = new();
    private ITimer? _waiting;
    private long? _lastEnd;
    private bool _running;
    private bool _askedMeanwhile;
    private bool _over;

    /// <summary>Asks for the work; it runs on whatever thread is free, never on the caller's.</summary>
    /// <param name="atOnce">False: not before the pause is over, whenever the work was done last.</param>
    public void Ask(bool atOnce = true)
    {
        lock (_gate)
        {
            if (_running)
                _askedMeanwhile = true;
            else
                Wait(atOnce ? Pause() : between);
        }
    }

    public void Dispose()
    {
        lock (_gate)
        {
            _over = true;
            _waiting?.Dispose();
            _waiting = null;
        }
    }

    private TimeSpan Pause() =>
        _lastEnd is { } last && between - clock.GetElapsedTime(last) is { Ticks: > 0 } left ? left : TimeSpan.Zero;

    private void Wait(TimeSpan pause)
    {
        if (_over || _waiting is not null)
            return;
        if (pause == TimeSpan.Zero)
        {
            _running = true;
            _ = Task.Run(RunAsync);
        }
        else
        {
            _waiting = clock.CreateTimer(_ => Begin(), null, pause, Timeout.InfiniteTimeSpan);
        }
    }

    private void Begin()
    {
        lock (_gate)
        {
            if (_waiting is null)
                return;
            _waiting.Dispose();
            _waiting = null;
            _running = true;
        }

        _ = RunAsync();
    }

    private async Task RunAsync()
    {
        try
        {
            await work();
        }
        finally
        {
            lock (_gate)
            {
                _running = false;
                _lastEnd = clock.GetTimestamp();
                if (_askedMeanwhile)
                    Wait(between);
                _askedMeanwhile = false;
            }
        }
    }
}
