using System.Data;
using System.Data.Common;
using System.Globalization;
using LabVolatility.Laboratory.Records;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace LabVolatility.Laboratory.Storage.Postgres;

internal sealed class PostgresEngine : DatabaseEngine
{
    private const long ChainLock = 0x4C61_6256_6F6C_0001;
    private const long MigrationLock = 0x4C61_6256_6F6C_0002;

    public static PostgresEngine Only { get; } = new();

    public override Task LockChainAsync(LabContext lab, CancellationToken cancellationToken) =>
        lab.Database.ExecuteSqlAsync($"SELECT pg_advisory_xact_lock({ChainLock})", cancellationToken);

    public override async Task<IAsyncDisposable> BeginSnapshotAsync(LabContext lab, CancellationToken cancellationToken) =>
        await lab.Database.BeginTransactionAsync(IsolationLevel.RepeatableRead, cancellationToken);

    public override string ReadCell(DbDataReader row, int column, MemberKind kind)
    {
        if (row.IsDBNull(column))
            return CanonicalText.Null;
        try
        {
            return CellText(row, column, kind);
        }
        catch (Exception nonsense) when (nonsense is InvalidCastException or OverflowException)
        {
            return Cells.Unreadable(nonsense.Message);
        }
    }

    public override async Task<IReadOnlyList<string>> LostGuardsAsync(LabContext lab, CancellationToken cancellationToken)
    {
        // Enabled as ALWAYS, on its table, calling its function with its body.
        const string Sql = """
            SELECT t.tgrelid::regclass::text || ': ' || t.tgname || E'\n' || p.prosrc AS "Value"
            FROM pg_trigger t JOIN pg_proc p ON p.oid = t.tgfoid
            WHERE NOT t.tgisinternal AND t.tgenabled = 'A'
            """;
        var triggers = await lab.Database.SqlQueryRaw<string>(Sql).ToListAsync(cancellationToken);
        var present = triggers.ToHashSet(StringComparer.Ordinal);
        return [.. PostgresGuards.Expected.Where(g => !present.Contains($"{g.Table}: {g.Trigger}\n{g.Sql}")).Select(g => $"{g.Table}: {g.Trigger}")];
    }

    // Several nodes may start at once; the lock has a connection of its own, since migrating opens and closes its own.
    public override async Task MigrateAsync(LabContext lab, CancellationToken cancellationToken)
    {
        await using var holder = new NpgsqlConnection(lab.Database.GetConnectionString());
        await holder.OpenAsync(cancellationToken);
        await using (var take = new NpgsqlCommand($"SELECT pg_advisory_lock({MigrationLock})", holder))
            await take.ExecuteNonQueryAsync(cancellationToken);
        try
        {
            // A role that owns no table may start the program, yet not lock the list of migrations.
            if ((await lab.Database.GetPendingMigrationsAsync(cancellationToken)).Any())
                await lab.Database.MigrateAsync(cancellationToken);
        }
        finally
        {
            await using var give = new NpgsqlCommand($"SELECT pg_advisory_unlock({MigrationLock})", holder);
            await give.ExecuteNonQueryAsync(CancellationToken.None);
        }
    }

    protected override bool IsKeyTaken(DbException error) => error.SqlState == PostgresErrorCodes.UniqueViolation;

    protected override string? RuleOfDriver(DbException error) =>
        error is PostgresException { SqlState: PostgresErrorCodes.UniqueViolation, ConstraintName: "one_test_a_container" }
            ? GuardRules.OneTestAContainer
            : base.RuleOfDriver(error);

    private static string CellText(DbDataReader row, int column, MemberKind kind) =>
        kind switch
        {
            MemberKind.Text => CanonicalText.OfText(row.GetString(column)),
            MemberKind.Json => Cells.Json(row.GetString(column)),
            MemberKind.Integer => row.GetFieldValue<long>(column).ToString(CultureInfo.InvariantCulture),
            MemberKind.Decimal => CanonicalText.OfDecimal(row.GetDecimal(column)),
            MemberKind.Boolean => row.GetBoolean(column) ? "true" : "false",
            MemberKind.Instant => CanonicalText.OfInstant(row.GetFieldValue<DateTime>(column)),
            MemberKind.Date => CanonicalText.OfDate(row.GetFieldValue<DateOnly>(column)),
            MemberKind.Identifier => CanonicalText.OfIdentifier(row.GetGuid(column)),
            MemberKind.Bytes => CanonicalText.OfBytes(row.GetFieldValue<byte[]>(column)),
            _ => throw new InvalidOperationException($"A cell of kind {kind} can't be read."),
        };
}
