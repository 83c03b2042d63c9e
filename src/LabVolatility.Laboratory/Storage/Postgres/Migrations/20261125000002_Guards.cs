using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace LabVolatility.Laboratory.Storage.Postgres.Migrations;

/// <summary>Written by hand: the triggers that hold the laboratory's rules in the database.</summary>
[DbContext(typeof(PostgresLabContext))]
[Migration("20261125000002_Guards")]
internal sealed class Guards : Migration
{
    protected override void Up(MigrationBuilder migrationBuilder)
    {
        foreach (var sql in PostgresGuards.Statements())
            migrationBuilder.Sql(sql);
    }
}
