using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace LabVolatility.Laboratory.Storage.Sqlite;

/// <summary>For the migrations tool; no database is opened.</summary>
internal sealed class SqliteDesign : IDesignTimeDbContextFactory<SqliteLabContext>
{
    public SqliteLabContext CreateDbContext(string[] args) =>
        new(new DbContextOptionsBuilder<SqliteLabContext>().UseSqlite("Data Source=design.db").Options, TimeProvider.System);
}
