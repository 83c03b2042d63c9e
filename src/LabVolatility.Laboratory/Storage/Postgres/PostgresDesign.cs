using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace LabVolatility.Laboratory.Storage.Postgres;

/// <summary>For the migrations tool; no database is opened.</summary>
internal sealed class PostgresDesign : IDesignTimeDbContextFactory<PostgresLabContext>
{
    public PostgresLabContext CreateDbContext(string[] args) =>
        new(new DbContextOptionsBuilder<PostgresLabContext>().UseNpgsql("Host=localhost;Database=design").Options, TimeProvider.System);
}
