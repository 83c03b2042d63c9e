using System.Data.Common;
using LabVolatility.Laboratory.Records;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Storage;

/// <summary>What differs between the engines.</summary>
internal abstract class DatabaseEngine
{
    /// <summary>Makes this transaction the only one that extends the chain, until it ends.</summary>
    public abstract Task LockChainAsync(LabContext lab, CancellationToken cancellationToken);

    /// <summary>Begins a transaction that reads one state of the whole database and keeps nobody from writing.</summary>
    public abstract Task<IAsyncDisposable> BeginSnapshotAsync(LabContext lab, CancellationToken cancellationToken);

    /// <summary>A cell as it stands in the database, in canonical text; a cell that can't hold such a value reads as text that no value has.</summary>
    public abstract string ReadCell(DbDataReader row, int column, MemberKind kind);

    /// <summary>Guards that are missing or were changed, named as table and trigger.</summary>
    public abstract Task<IReadOnlyList<string>> LostGuardsAsync(LabContext lab, CancellationToken cancellationToken);

    /// <summary>Brings the database to the newest migration; safe when several nodes start at once.</summary>
    public abstract Task MigrateAsync(LabContext lab, CancellationToken cancellationToken);

    public bool IsUniqueViolation(Exception exception) =>
        Driver(exception) is { } error && (IsKeyTaken(error) || GuardRules.Of(error.Message) is GuardRules.SameKey or GuardRules.OneDecisionInForce or GuardRules.OneTestAContainer);

    public string? RuleOf(Exception exception) => Driver(exception) is { } error ? RuleOfDriver(error) : null;

    protected abstract bool IsKeyTaken(DbException error);

    protected virtual string? RuleOfDriver(DbException error) => GuardRules.Of(error.Message);

    private static DbException? Driver(Exception exception) => exception switch
    {
        DbException error => error,
        DbUpdateException { InnerException: DbException error } => error,
        _ => null,
    };
}
