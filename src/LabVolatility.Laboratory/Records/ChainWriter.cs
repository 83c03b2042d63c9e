using System.Globalization;
using System.Text;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using Microsoft.EntityFrameworkCore.Storage;

namespace LabVolatility.Laboratory.Records;

/// <summary>Puts audit records at the end of the chain, inside the transaction that made the changes.</summary>
/// <remarks>
/// Number and previous hash are taken under one lock that is held to the end of the transaction: the sequence has no
/// gap, and a transaction that is rolled back burns no number.
/// </remarks>
internal static class ChainWriter
{
    private const int RowsAStatement = 40;

    public static async Task AppendAsync(LabContext lab, IReadOnlyList<Change> changes, CancellationToken cancellationToken)
    {
        if (changes.Count == 0)
            return;
        await lab.Engine.LockChainAsync(lab, cancellationToken);
        var head = await lab.AuditRecords.AsNoTracking().OrderByDescending(r => r.Sequence)
            .Select(r => new { r.Sequence, r.Hash }).FirstOrDefaultAsync(cancellationToken);
        var records = Chained(lab, changes, head?.Sequence ?? 0, head?.Hash ?? Chain.Genesis);
        foreach (var some in records.Chunk(RowsAStatement))
            await InsertAsync(lab, some, cancellationToken);
    }

    private static List<AuditRecord> Chained(LabContext lab, IReadOnlyList<Change> changes, long sequence, string previous)
    {
        var act = lab.Act ?? throw new InvalidOperationException("No write without an audit record: set Act.");
        var at = Instant.Cut(lab.Clock.GetUtcNow());
        var records = new List<AuditRecord>(changes.Count);
        foreach (var change in changes)
        {
            var record = Record(act, at, change, ++sequence, previous, hash: "");
            previous = Chain.HashOf(record);
            records.Add(Record(act, at, change, sequence, record.PreviousHash, previous));
        }

        return records;
    }

    private static AuditRecord Record(Act act, DateTimeOffset at, Change change, long sequence, string previous, string hash) => new()
    {
        Sequence = sequence,
        At = at,
        ActorId = act.ActorId,
        Actor = act.Actor,
        Origin = act.Origin,
        Action = act.Name,
        Subject = change.Itself.Kind,
        SubjectId = change.Itself.Key,
        Before = change.Before,
        After = change.After,
        Reason = act.Reason,
        Build = Records.Build.Name,
        PreviousHash = previous,
        Hash = hash,
    };

    // Plain SQL, so that the context's own entries stay unsaved in its eyes until the whole transaction stands.
    private static async Task InsertAsync(LabContext lab, AuditRecord[] records, CancellationToken cancellationToken)
    {
        var entity = lab.Model.FindEntityType(typeof(AuditRecord)) ?? throw new InvalidOperationException("The model has no audit records.");
        var properties = entity.GetProperties().ToList();
        await using var command = lab.Database.GetDbConnection().CreateCommand();
        command.Transaction = lab.Database.CurrentTransaction?.GetDbTransaction();
        var sql = new StringBuilder("INSERT INTO audit_records (");
        sql.AppendJoin(", ", properties.Select(p => $"\"{p.GetColumnName()}\"")).Append(") VALUES ");
        foreach (var (row, record) in records.Index())
        {
            sql.Append(row == 0 ? "(" : ", (");
            foreach (var (column, property) in properties.Index())
            {
                var name = string.Create(CultureInfo.InvariantCulture, $"@p{row}_{column}");
                sql.Append(column == 0 ? "" : ", ").Append(name);
                command.Parameters.Add(property.GetRelationalTypeMapping()
                    .CreateParameter(command, name, ValueOf(property, record), property.IsNullable));
            }

            sql.Append(')');
        }

        command.CommandText = sql.ToString();
        await command.ExecuteNonQueryAsync(cancellationToken);
    }

    private static object? ValueOf(IProperty property, AuditRecord record)
    {
        var value = property.GetGetter().GetClrValue(record);
        if (value is string text && property.GetMaxLength() is { } longest && text.Length > longest)
            throw new InvalidOperationException($"{property.Name} of the audit record is longer than {longest} characters.");
        return value;
    }
}
