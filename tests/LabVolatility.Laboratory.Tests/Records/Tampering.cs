using System.Data.Common;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Records;

/// <summary>Somebody who owns the database, drops its guards and changes single cells.</summary>
internal sealed class Tampering : IAsyncDisposable
{
    private readonly TestLaboratory _laboratory;
    private readonly DbConnection _connection;

    private Tampering(TestLaboratory laboratory) => (_laboratory, _connection) = (laboratory, laboratory.Behind());

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private bool IsSqlite => _laboratory.Engine is StorageEngine.Sqlite;

    public static async Task<Tampering> Begin(TestLaboratory laboratory)
    {
        var tampering = new Tampering(laboratory);
        await tampering._connection.OpenAsync(Cancel);
        await using var lab = laboratory.Open();
        var triggers = await lab.Database.SqlQueryRaw<string>(tampering.IsSqlite
            ? "SELECT 'DROP TRIGGER ' || name AS \"Value\" FROM sqlite_master WHERE type = 'trigger'"
            : "SELECT 'DROP TRIGGER ' || tgname || ' ON ' || tgrelid::regclass AS \"Value\" FROM pg_trigger WHERE NOT tgisinternal").ToListAsync(Cancel);
        foreach (var drop in triggers)
            await tampering.Run(drop);
        await tampering.Run(tampering.IsSqlite ? "PRAGMA foreign_keys = OFF" : "SET session_replication_role = replica");
        return tampering;
    }

    /// <summary>Every cell that is recorded, or that an audit record consists of.</summary>
    public async Task<List<Cell>> Cells(bool ofAuditRecords)
    {
        await using var lab = _laboratory.Open();
        await lab.Database.OpenConnectionAsync(Cancel);
        var cells = new List<Cell>();
        foreach (var entity in lab.Model.GetEntityTypes().Where(e => ofAuditRecords ? e.ClrType == typeof(AuditRecord) : e.ClrType.IsAssignableTo(typeof(IRecorded))))
        {
            var members = RecordedMembers.Of(entity);
            var key = members.Key[0];
            await RowReader.ReadAsync(lab, entity, (id, _) => cells.AddRange(members.Members
                .Where(m => m.Property != key).Select(m => new Cell(entity.GetTableName()!, id, Where(key, id), m))), Cancel);
        }

        return cells;
    }

    /// <summary>Changes a cell: false where a constraint of the table forbids this change.</summary>
    public async Task<bool> Change(Cell cell)
    {
        var column = $"\"{cell.Member.Property.GetColumnName()}\"";
        try
        {
            return await Run($"UPDATE {cell.Table} SET {column} = {Other(cell.Member.Kind, column)} WHERE {cell.Where}") == 1;
        }
        catch (DbException)
        {
            return false;
        }
    }

    public async Task<int> Run(string sql)
    {
        await using var command = _connection.CreateCommand();
        command.CommandText = sql;
        return await command.ExecuteNonQueryAsync(Cancel);
    }

    public ValueTask DisposeAsync() => _connection.DisposeAsync();

    private string Where(IProperty key, string id) =>
        $"\"{key.GetColumnName()}\" = {(key.ClrType == typeof(Guid) ? _laboratory.Quoted(Guid.Parse(id)) : key.ClrType == typeof(string) ? $"'{id}'" : id)}";

    private string Other(MemberKind kind, string column) => (kind, IsSqlite) switch
    {
        (MemberKind.Text, _) => $"COALESCE({column}, '') || 'x'",
        (MemberKind.Json, _) => $"REPLACE(REPLACE(COALESCE({column}, ''), ']', ',7]'), '\":', 'x\":')",
        (MemberKind.Integer, _) => $"COALESCE({column}, 0) + 1",
        (MemberKind.Decimal, true) => $"CAST(COALESCE({column}, 0) + 0.5 AS TEXT)",
        (MemberKind.Decimal, false) => $"COALESCE({column}, 0) + 0.0000000001",
        (MemberKind.Boolean, true) => $"1 - COALESCE({column}, 0)",
        (MemberKind.Boolean, false) => $"NOT COALESCE({column}, false)",
        (MemberKind.Instant, true) => $"COALESCE({column}, 0) + 1",
        (MemberKind.Instant, false) => $"COALESCE({column}, TIMESTAMPTZ '2026-01-01') + INTERVAL '1 microsecond'",
        (MemberKind.Date, true) => $"COALESCE(date({column}, '+1 day'), '2026-01-01')",
        (MemberKind.Date, false) => $"COALESCE({column}, DATE '2026-01-01') + 1",
        (MemberKind.Bytes, true) => "x'00'",
        (MemberKind.Bytes, false) => "'\\x00'::bytea",
        _ => _laboratory.Quoted(Guid.NewGuid()),
    };

    /// <param name="Table">Its table.</param>
    /// <param name="Id">Its row, as in the record.</param>
    /// <param name="Where">Its row, as in a statement.</param>
    /// <param name="Member">Its column.</param>
    internal sealed record Cell(string Table, string Id, string Where, RecordedMember Member);
}
