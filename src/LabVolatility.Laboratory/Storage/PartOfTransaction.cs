using System.Data.Common;
using Microsoft.EntityFrameworkCore.Storage;

namespace LabVolatility.Laboratory.Storage;

/// <summary>The transaction of one use case inside a greater one: kept or taken back by itself, committed with the whole.</summary>
internal sealed class PartOfTransaction : IDbContextTransaction
{
    private const string Savepoint = "before_act";

    private readonly DbTransaction _around;
    private readonly ReadOnce _read;
    private bool _isOpen = true;

    private PartOfTransaction(DbTransaction around, ReadOnce read) => (_around, _read) = (around, read);

    public Guid TransactionId { get; } = Guid.NewGuid();

    public static async Task<PartOfTransaction> BeginAsync(LabContext lab, IDbContextTransaction around, CancellationToken cancellationToken)
    {
        var part = new PartOfTransaction(around.GetDbTransaction(), lab.Read);
        await part._around.SaveAsync(Savepoint, cancellationToken);
        return part;
    }

    public void Commit()
    {
        _around.Release(Savepoint);
        _isOpen = false;
    }

    public async Task CommitAsync(CancellationToken cancellationToken = default)
    {
        await _around.ReleaseAsync(Savepoint, cancellationToken);
        _isOpen = false;
    }

    public void Rollback()
    {
        _read.Forget();
        _around.Rollback(Savepoint);
        Commit();
    }

    public async Task RollbackAsync(CancellationToken cancellationToken = default)
    {
        _read.Forget();
        await _around.RollbackAsync(Savepoint, cancellationToken);
        await CommitAsync(cancellationToken);
    }

    public void Dispose()
    {
        if (_isOpen)
            Rollback();
    }

    public ValueTask DisposeAsync() => _isOpen ? new ValueTask(RollbackAsync()) : ValueTask.CompletedTask;
}
