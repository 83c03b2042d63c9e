using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace LabVolatility.Laboratory.Storage;

/// <summary>Runs many use cases in one transaction: what one commits is kept when all are done, or not at all.</summary>
/// <remarks>
/// Rules, audit records, chain and guards are those of single acts: each use case opens its own context and begins and
/// commits as ever, as a part of the transaction around it. Nobody else writes meanwhile, so that what is read once
/// of the reference data holds until one of the acts changes it.
/// </remarks>
internal sealed class ActsTogether : IAsyncDisposable
{
    private readonly LabContext _around;
    private readonly Func<LabContext> _join;
    private readonly ReadOnce _read = new();
    private IDbContextTransaction? _running;

    private ActsTogether(LabContext around, Func<LabContext> join) => (_around, _join) = (around, join);

    public static async Task<ActsTogether> OpenAsync(StorageOptions storage, TimeProvider clock, CancellationToken cancellationToken)
    {
        var around = LabStorage.Opener(storage.Engine, storage.Connection, clock)();
        await around.Database.OpenConnectionAsync(cancellationToken);
        return new ActsTogether(around, LabStorage.Opener(storage.Engine, around.Database.GetDbConnection(), clock));
    }

    /// <summary>A context that works in the running transaction.</summary>
    /// <exception cref="InvalidOperationException">None is running.</exception>
    public LabContext Open()
    {
        var running = _running ?? throw new InvalidOperationException("No acts are running together.");
        var lab = _join();
        lab.Database.UseTransaction(running.GetDbTransaction());
        lab.Read = _read;
        return lab;
    }

    /// <summary>Runs acts and commits them all; where one throws, none is kept.</summary>
    public async Task RunAsync(Func<Task> acts, CancellationToken cancellationToken)
    {
        await using var running = await _around.BeginWriteAsync(cancellationToken);
        try
        {
            _running = running;
            await acts();
            await running.CommitAsync(cancellationToken);
        }
        finally
        {
            _running = null;
            _read.Forget();
        }
    }

    public ValueTask DisposeAsync() => _around.DisposeAsync();
}
