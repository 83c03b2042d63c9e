using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Storage;

/// <summary>A PostgreSQL from a container takes the laboratory as well as the one that the tests run on.</summary>
public sealed class ContainerSmokeTests
{
    // Only what is there is a row: where no engine answers, nothing is skipped and nothing is pretended.
    public static async Task<TheoryData<bool>> Servers() =>
        await DockerEngine.HasImageAsync(PostgresServer.Image, CancellationToken.None) ? [false, true] : [false];

    [Theory, MemberData(nameof(Servers))]
    public async Task Migrate_EmptyPostgres_Answers(bool fromContainer)
    {
        var cancellation = TestContext.Current.CancellationToken;
        await using var container = fromContainer ? await PostgresServer.StartContainerAsync() : null;
        var connection = container?.GetConnectionString() ?? await TestDatabases.NewEmptyAsync(StorageEngine.Postgres);
        await using var lab = LabStorage.Opener(StorageEngine.Postgres, connection, TimeProvider.System)();

        await lab.Engine.MigrateAsync(lab, cancellation);

        Assert.Empty(await lab.Database.GetPendingMigrationsAsync(cancellation));
        Assert.Equal(0, await lab.Batches.CountAsync(cancellation));
        if (container is null)
            await TestDatabases.DropAsync(StorageEngine.Postgres, connection);
    }
}
