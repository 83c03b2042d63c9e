using System.Data.Common;
using System.Text;
using LabVolatility.Laboratory.Records;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace LabVolatility.Laboratory.Storage.Postgres;

/// <summary>Every node is told by the server, which sends a notification when, and only when, its transaction stands.</summary>
internal sealed class PostgresNotices : NoticesOfTransaction
{
    public override InterceptionResult TransactionCommitting(DbTransaction transaction, TransactionEventData eventData, InterceptionResult result)
    {
        if (Take(eventData) is { } notice)
            eventData.Context!.Database.ExecuteSql($"SELECT pg_notify({PostgresListener.Changes}, {Text(notice)})");
        return result;
    }

    public override async ValueTask<InterceptionResult> TransactionCommittingAsync(
        DbTransaction transaction, TransactionEventData eventData, InterceptionResult result, CancellationToken cancellationToken = default)
    {
        if (Take(eventData) is { } notice)
            await NotifyAsync(eventData.Context!, PostgresListener.Changes, Text(notice), cancellationToken);
        return result;
    }

    public static Task NotifyAsync(DbContext lab, string channel, string text, CancellationToken cancellationToken) =>
        lab.Database.ExecuteSqlAsync($"SELECT pg_notify({channel}, {text})", cancellationToken);

    private static string Text(Notice notice) => Encoding.UTF8.GetString(notice.Written());
}
