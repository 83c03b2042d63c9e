using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Storage.Postgres;

/// <summary>What the role that the program runs under may do, where another role owns the tables.</summary>
internal static class PostgresRole
{
    /// <summary>Reads and adds everywhere; changes and deletes only where no reported fact is kept.</summary>
    public static async Task GrantAsync(LabContext owner, string role, CancellationToken cancellationToken)
    {
        var name = Quoted(role);
        var tables = owner.Model.GetEntityTypes().Select(e => e.GetTableName()).OfType<string>().Distinct().ToList();
        var records = PostgresGuards.RecordTables.ToHashSet(StringComparer.Ordinal);
        var sql = $"""
            GRANT USAGE ON SCHEMA public TO {name};
            REVOKE ALL ON ALL TABLES IN SCHEMA public FROM {name};
            GRANT SELECT ON ALL TABLES IN SCHEMA public TO {name};
            GRANT INSERT ON {List(tables)} TO {name};
            GRANT UPDATE, DELETE ON {List(tables.Where(t => !records.Contains(t)))} TO {name};
            GRANT USAGE ON ALL SEQUENCES IN SCHEMA public TO {name};
            """;
        await owner.Database.ExecuteSqlRawAsync(sql, cancellationToken);
    }

    private static string List(IEnumerable<string> tables) => string.Join(", ", tables.Select(Quoted));

    private static string Quoted(string name) => $"\"{name.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
