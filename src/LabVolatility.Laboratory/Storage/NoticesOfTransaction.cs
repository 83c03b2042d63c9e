using System.Data.Common;
using LabVolatility.Laboratory.Records;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace LabVolatility.Laboratory.Storage;

/// <summary>Makes one notice of what a transaction saved; how it is told, and at which moment, is the engine's.</summary>
internal abstract class NoticesOfTransaction : DbTransactionInterceptor
{
    // One that was never committed has told nobody: what it saved is forgotten with it.
    public override DbTransaction TransactionStarted(DbConnection connection, TransactionEndEventData eventData, DbTransaction result)
    {
        Take(eventData);
        return result;
    }

    public override ValueTask<DbTransaction> TransactionStartedAsync(
        DbConnection connection, TransactionEndEventData eventData, DbTransaction result, CancellationToken cancellationToken = default)
    {
        Take(eventData);
        return ValueTask.FromResult(result);
    }

    /// <summary>What was saved since the transaction began, once; null where nothing recorded was.</summary>
    protected static Notice? Take(DbContextEventData eventData)
    {
        if (eventData.Context is not LabContext lab)
            return null;
        var notice = Notice.Of(lab.Untold);
        lab.Untold.Clear();
        return notice;
    }
}
