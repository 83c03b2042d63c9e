using System.Data.Common;
using LabVolatility.Laboratory.Records;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace LabVolatility.Laboratory.Storage.Sqlite;

/// <summary>The file has one node: its own board is told, once the transaction stands.</summary>
internal sealed class SqliteNotices(NoticeBoard board) : NoticesOfTransaction
{
    public override void TransactionCommitted(DbTransaction transaction, TransactionEndEventData eventData) => Tell(eventData);

    public override Task TransactionCommittedAsync(
        DbTransaction transaction, TransactionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        Tell(eventData);
        return Task.CompletedTask;
    }

    private void Tell(TransactionEndEventData eventData)
    {
        if (Take(eventData) is { } notice)
            board.Post(notice);
    }
}
