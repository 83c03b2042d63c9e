using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Storage.Sqlite;

internal sealed class SqliteLabContext(DbContextOptions<SqliteLabContext> options, TimeProvider clock) : LabContext(options, clock)
{
    internal override DatabaseEngine Engine => SqliteEngine.Only;

    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        base.ConfigureConventions(configurationBuilder);

        // SQLite can't order by an instant with an offset.
        configurationBuilder.Properties<DateTimeOffset>().HaveConversion<MicrosecondConverter>();
    }
}
