using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Storage.Postgres;

internal sealed class PostgresLabContext(DbContextOptions<PostgresLabContext> options, TimeProvider clock) : LabContext(options, clock)
{
    internal override DatabaseEngine Engine => PostgresEngine.Only;

    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        base.ConfigureConventions(configurationBuilder);

        // The driver refuses an offset other than zero.
        configurationBuilder.Properties<DateTimeOffset>().HaveConversion<UtcConverter>();
    }
}
