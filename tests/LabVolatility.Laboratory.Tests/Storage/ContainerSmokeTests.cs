using DotNet.Testcontainers.Configurations;
using DotNet.Testcontainers.Images;
using Npgsql;
using Testcontainers.PostgreSql;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Storage;

/// <summary>PostgreSQL answers: the one the tests were given, and one in a container where an engine has an image of it.</summary>
public sealed class ContainerSmokeTests
{
    private const string Given = "given";

    // Only what is there is a row: where no engine answers, nothing is skipped and nothing is pretended.
    public static async Task<TheoryData<string>> Servers()
    {
        var image = await DockerEngine.PostgresImageAsync(CancellationToken.None);
        return image is null ? [Given] : [Given, image];
    }

    [Theory, MemberData(nameof(Servers))]
    public async Task Postgres_Started_Answers(string server)
    {
        var cancellation = TestContext.Current.CancellationToken;
        await using var container = server == Given ? null : await StartAsync(server, cancellation);
        var connectionString = container?.GetConnectionString() ?? GivenConnection();

        await using var connection = new NpgsqlConnection(connectionString);
        await connection.OpenAsync(cancellation);
        await using var question = new NpgsqlCommand("select 1", connection);
        var answer = await question.ExecuteScalarAsync(cancellation);

        Assert.Equal(1, answer);
    }

    private static string GivenConnection() =>
        Environment.GetEnvironmentVariable("LABVOLATILITY_TEST_POSTGRES") is { Length: > 0 } given
            ? given
            : throw new InvalidOperationException("LABVOLATILITY_TEST_POSTGRES is not set. 'bash tests/all.sh' starts a PostgreSQL and sets it.");

    private static async Task<PostgreSqlContainer> StartAsync(string image, CancellationToken cancellation)
    {
        // Speak the engine's own version; publish on this machine only; start no helper container, whose image may not be here.
        Environment.SetEnvironmentVariable("DOCKER_API_VERSION", await DockerEngine.ApiVersionAsync(cancellation));
        Environment.SetEnvironmentVariable("TESTCONTAINERS_HOST_OVERRIDE", "127.0.0.1");
        TestcontainersSettings.ResourceReaperEnabled = false;
        var container = new PostgreSqlBuilder(image)
            .WithImagePullPolicy(PullPolicy.Never)
            .WithCreateParameterModifier(parameters =>
            {
                foreach (var binding in parameters.HostConfig!.PortBindings!.Values.SelectMany(bindings => bindings))
                    binding.HostIP = "127.0.0.1";
            })
            .Build();
        try
        {
            await container.StartAsync(cancellation);
            return container;
        }
        catch
        {
            await container.DisposeAsync();
            throw;
        }
    }
}
