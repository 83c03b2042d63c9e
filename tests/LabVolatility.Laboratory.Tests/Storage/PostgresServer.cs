using DotNet.Testcontainers.Configurations;
using Testcontainers.PostgreSql;

namespace LabVolatility.Laboratory.Tests.Storage;

/// <summary>Finds a PostgreSQL for the tests: the one that is named, else a throwaway cluster, else a container.</summary>
internal static class PostgresServer
{
    public const string Image = "postgres:17";

    public static async Task<(string Connection, IAsyncDisposable? Owned)> FindAsync()
    {
        if (Environment.GetEnvironmentVariable("LABVOLATILITY_TEST_POSTGRES") is { Length: > 0 } named)
            return (named, null);
        if (ThrowawayCluster.FindPrograms() is { } programs)
        {
            var cluster = await ThrowawayCluster.StartAsync(programs);
            return (cluster.Connection, cluster);
        }

        try
        {
            var container = await StartContainerAsync();
            return (container.GetConnectionString(), container);
        }
        catch (Exception exception)
        {
            throw new InvalidOperationException(
                "These rows need PostgreSQL: name one in LABVOLATILITY_TEST_POSTGRES (its owner's connection string), or install it (apt-get install postgresql), or run a container engine.",
                exception);
        }
    }

    public static async Task<PostgreSqlContainer> StartContainerAsync()
    {
        Environment.SetEnvironmentVariable("DOCKER_API_VERSION", Environment.GetEnvironmentVariable("DOCKER_API_VERSION") ?? "1.41");
        Environment.SetEnvironmentVariable("TESTCONTAINERS_HOST_OVERRIDE", Environment.GetEnvironmentVariable("TESTCONTAINERS_HOST_OVERRIDE") ?? "127.0.0.1");
        TestcontainersSettings.ResourceReaperEnabled = false;
        var container = new PostgreSqlBuilder(Image).WithCreateParameterModifier(parameters =>
        {
            foreach (var binding in parameters.HostConfig!.PortBindings!.Values.SelectMany(b => b))
                binding.HostIP = "127.0.0.1";
        }).Build();
        await container.StartAsync();
        return container;
    }
}
