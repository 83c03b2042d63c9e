using System.Data.Common;
using LabVolatility.Web.Records;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server.Circuits;
using Serilog.Context;

namespace LabVolatility.Web.People;

/// <summary>Lets nothing a page sends through once its session has ended, and notices the end while nobody does anything.</summary>
public sealed class SessionCircuitHandler(
    AuthenticationStateProvider authentication, CircuitSession session, OpenSessions open, TimeProvider clock, ILogger<SessionCircuitHandler> log)
    : CircuitHandler, IAsyncDisposable
{
    private readonly CancellationTokenSource _closed = new();
    private Task _watch = Task.CompletedTask;

    public override async Task OnCircuitOpenedAsync(Circuit circuit, CancellationToken cancellationToken)
    {
        var state = await authentication.GetAuthenticationStateAsync();
        session.Begin(state.User);
        open.Add(session);
        _watch = WatchAsync();
    }

    // After a lost line: the rights may be others meanwhile.
    public override Task OnConnectionUpAsync(Circuit circuit, CancellationToken cancellationToken) => LookAsync();

    public override Task OnCircuitClosedAsync(Circuit circuit, CancellationToken cancellationToken)
    {
        open.Remove(session);
        return _closed.CancelAsync();
    }

    public override Func<CircuitInboundActivityContext, Task> CreateInboundActivityHandler(Func<CircuitInboundActivityContext, Task> next) => async context =>
    {
        using (LogContext.PushProperty(Reference.Property, session.Reference))
        {
            if (!await session.HoldsAsync())
                return;
            session.Hear();
            await next(context);
        }
    };

    public async ValueTask DisposeAsync()
    {
        open.Remove(session);
        await _closed.CancelAsync();
        await _watch;
        _closed.Dispose();
    }

    private async Task WatchAsync()
    {
        using var timer = new PeriodicTimer(SessionTimes.BetweenChecks, clock);
        try
        {
            while (await timer.WaitForNextTickAsync(_closed.Token))
                await LookAsync();
        }
        catch (OperationCanceledException)
        {
        }
    }

    private async Task LookAsync()
    {
        try
        {
            await session.HoldsAsync();
        }
        catch (DbException away)
        {
            log.LogWarning("A session can't be checked now: {Reason}", away.Message);
        }
    }
}
