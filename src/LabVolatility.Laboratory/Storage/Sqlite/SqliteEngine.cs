using System.Data.Common;
using System.Globalization;
using LabVolatility.Laboratory.Records;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Storage.Sqlite;

internal sealed class SqliteEngine : DatabaseEngine
{
    private const int UniqueKey = 2067;
    private const int PrimaryKey = 1555;

    public static SqliteEngine Only { get; } = new();

    // The transaction began as a writing one (BEGIN IMMEDIATE), and SQLite has one writer.
    public override Task LockChainAsync(LabContext lab, CancellationToken cancellationToken) => Task.CompletedTask;

    public override async Task<IAsyncDisposable> BeginSnapshotAsync(LabContext lab, CancellationToken cancellationToken)
    {
        await lab.Database.OpenConnectionAsync(cancellationToken);
        var connection = (SqliteConnection)lab.Database.GetDbConnection();
        var reading = connection.BeginTransaction(deferred: true);
        return await lab.Database.UseTransactionAsync(reading, cancellationToken)
            ?? throw new InvalidOperationException("The reading transaction was not taken.");
    }

    public override string ReadCell(DbDataReader row, int column, MemberKind kind)
    {
        var cell = row.GetValue(column);
        return (kind, cell) switch
        {
            (_, DBNull) => CanonicalText.Null,
            (MemberKind.Text, string text) => CanonicalText.OfText(text),
            (MemberKind.Json, string text) => Cells.Json(text),
            (MemberKind.Integer, long number) => number.ToString(CultureInfo.InvariantCulture),
            (MemberKind.Boolean, 0L) => "false",
            (MemberKind.Boolean, 1L) => "true",
            (MemberKind.Decimal, string text) when decimal.TryParse(text, NumberStyles.Number, CultureInfo.InvariantCulture, out var number) =>
                CanonicalText.OfDecimal(number),
            (MemberKind.Instant, long microseconds) => Cells.Instant(microseconds),
            (MemberKind.Date, string text) when DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) =>
                CanonicalText.OfDate(day),
            (MemberKind.Identifier, string text) when Guid.TryParseExact(text, "D", out var id) && !text.Any(char.IsAsciiLetterLower) =>
                CanonicalText.OfIdentifier(id),
            (MemberKind.Bytes, byte[] bytes) => CanonicalText.OfBytes(bytes),
            _ => Cells.Unreadable(cell),
        };
    }

    public override async Task<IReadOnlyList<string>> LostGuardsAsync(LabContext lab, CancellationToken cancellationToken)
    {
        var triggers = await lab.Database
            .SqlQueryRaw<string>("SELECT name || char(10) || sql AS \"Value\" FROM sqlite_master WHERE type = 'trigger'")
            .ToListAsync(cancellationToken);
        var present = triggers.ToHashSet(StringComparer.Ordinal);
        return [.. SqliteGuards.All.Where(g => !present.Contains($"{g.Trigger}\n{g.Sql}")).Select(g => $"{g.Table}: {g.Trigger}")];
    }

    // A row left in the lock by a crash would make the migration wait for ever; the file has one node only.
    public override async Task MigrateAsync(LabContext lab, CancellationToken cancellationToken)
    {
        var locks = await lab.Database
            .SqlQueryRaw<string>("SELECT name AS \"Value\" FROM sqlite_master WHERE type = 'table' AND name = '__EFMigrationsLock'")
            .ToListAsync(cancellationToken);
        if (locks.Count > 0)
            await lab.Database.ExecuteSqlRawAsync("DELETE FROM \"__EFMigrationsLock\"", cancellationToken);
        await lab.Database.MigrateAsync(cancellationToken);
    }

    protected override bool IsKeyTaken(DbException error) =>
        error is SqliteException { SqliteExtendedErrorCode: UniqueKey or PrimaryKey };

    protected override string? RuleOfDriver(DbException error) =>
        error is SqliteException { SqliteExtendedErrorCode: UniqueKey } && error.Message.Contains("determinations.container_id", StringComparison.Ordinal)
            ? GuardRules.OneTestAContainer
            : base.RuleOfDriver(error);
}
