using LabVolatility.Web.Layout;
using Microsoft.Extensions.Time.Testing;
using Xunit;

namespace LabVolatility.Web.Tests.Layout;

public sealed class PaceTests : IDisposable
{
    private static readonly TimeSpan Between = TimeSpan.FromMilliseconds(400);

    private readonly FakeTimeProvider _clock = new(new DateTimeOffset(2026, 5, 10, 8, 0, 0, TimeSpan.Zero));
    private readonly SemaphoreSlim _begun = new(0);
    private readonly SemaphoreSlim _goOn = new(0);
    private int _runs;

    public void Dispose()
    {
        _begun.Dispose();
        _goOn.Dispose();
    }

    [Fact]
    public async Task Pace_FirstRequest_RunsAtOnce()
    {
        using var pace = new Pace(_clock, Between, WorkAsync);

        pace.Ask();

        await RunsAsync(1);
    }

    [Fact]
    public async Task Pace_ManyRequestsDuringTheWork_RunItOnceMoreAfterThePause()
    {
        using var pace = new Pace(_clock, Between, WorkAsync);
        pace.Ask();
        await RunsAsync(1);
        pace.Ask();
        pace.Ask();
        pace.Ask();
        var end = _clock.GetUtcNow();
        _goOn.Release();

        _clock.Advance(Between - TimeSpan.FromMilliseconds(1));
        await UntilBegunAsync();

        Assert.True(_clock.GetUtcNow() - end >= Between);
        await RunsAsync(2);
        _goOn.Release();
        _clock.Advance(10 * Between);
        Assert.Equal(2, _runs);
    }

    [Fact]
    public async Task Pace_NotAtOnce_WaitsThePause()
    {
        using var pace = new Pace(_clock, Between, WorkAsync);

        pace.Ask(atOnce: false);
        var before = _runs;
        _clock.Advance(Between);

        Assert.Equal(0, before);
        await RunsAsync(1);
    }

    [Fact]
    public void Pace_Disposed_RunsNothingMore()
    {
        var pace = new Pace(_clock, Between, WorkAsync);
        pace.Ask(atOnce: false);

        pace.Dispose();
        _clock.Advance(10 * Between);
        pace.Ask();
        pace.Ask(atOnce: false);
        _clock.Advance(10 * Between);

        Assert.Equal(0, _runs);
    }

    private async Task WorkAsync()
    {
        Interlocked.Increment(ref _runs);
        _begun.Release();
        await _goOn.WaitAsync(TestContext.Current.CancellationToken);
    }

    private async Task RunsAsync(int runs)
    {
        Assert.True(await _begun.WaitAsync(TimeSpan.FromSeconds(20), TestContext.Current.CancellationToken));
        Assert.Equal(runs, _runs);
    }

    // The work ends on a thread of its own: the pause begins when it has.
    private async Task UntilBegunAsync()
    {
        while (_begun.CurrentCount == 0)
        {
            TestContext.Current.CancellationToken.ThrowIfCancellationRequested();
            _clock.Advance(TimeSpan.FromMilliseconds(50));
            await Task.Yield();
        }
    }
}
