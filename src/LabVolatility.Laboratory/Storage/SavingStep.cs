using System.Data.Common;
using Microsoft.EntityFrameworkCore.Storage;

namespace LabVolatility.Laboratory.Storage;

/// <summary>One save with its audit records: a transaction of its own, or a savepoint in the use case's.</summary>
/// <remarks>Without the savepoint a use case that caught a failed audit record could still commit the change.</remarks>
internal sealed class SavingStep : IAsyncDisposable
{
    private const string Savepoint = "before_saving";

    private readonly IDbContextTransaction _transaction;
    private readonly bool _isOwn;
    private bool _isKept;

    private SavingStep(IDbContextTransaction transaction, bool isOwn) => (_transaction, _isOwn) = (transaction, isOwn);

    public static async Task<SavingStep> BeginAsync(LabContext lab, CancellationToken cancellationToken)
    {
        if (lab.Database.CurrentTransaction is not { } open)
            return new SavingStep(await lab.BeginWriteAsync(cancellationToken), isOwn: true);
        await open.CreateSavepointAsync(Savepoint, cancellationToken);
        return new SavingStep(open, isOwn: false);
    }

    public async Task KeepAsync(CancellationToken cancellationToken)
    {
        if (_isOwn)
            await _transaction.CommitAsync(cancellationToken);
        else
            await _transaction.ReleaseSavepointAsync(Savepoint, cancellationToken);
        _isKept = true;
    }

    public async ValueTask DisposeAsync()
    {
        if (_isOwn)
            await _transaction.DisposeAsync();
        else if (!_isKept)
            await UndoAsync();
    }

    // Where the engine has dropped the whole transaction already, what made it drop it is the news.
    private async Task UndoAsync()
    {
        try
        {
            await _transaction.RollbackToSavepointAsync(Savepoint);
        }
        catch (DbException)
        {
            await _transaction.RollbackAsync();
        }
    }
}
