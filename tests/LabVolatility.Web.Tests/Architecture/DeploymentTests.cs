using System.Text.RegularExpressions;
using LabVolatility.Web.Commands;
using Xunit;

namespace LabVolatility.Web.Tests.Architecture;

/// <summary>What an installation by the files of deploy/ promises: nothing open to the network, no secret, no rights.</summary>
public sealed partial class DeploymentTests
{
    private static readonly string Compose = SourceTree.Text("docker-compose.yml");
    private static readonly string Image = SourceTree.Text("deploy/Dockerfile");

    [Fact]
    public void Compose_Ports_AreThoseOfThisMachineOnly()
    {
        var ports = PublishedPort().Matches(Compose).Select(m => m.Groups["port"].Value).ToList();

        Assert.NotEmpty(ports);
        Assert.All(ports, port => Assert.StartsWith("127.0.0.1:", port, StringComparison.Ordinal));
    }

    [Fact]
    public void Compose_Passwords_ComeFromTheEnvironmentAndAreDue()
    {
        var passwords = PasswordGiven().Matches(Compose).Select(m => m.Groups["value"].Value).ToList();

        Assert.NotEmpty(passwords);
        Assert.All(passwords, value => Assert.Matches(@"^\$\{LABVOLATILITY_[A-Z]+_PASSWORD:\?", value));
    }

    [Fact]
    public void Compose_SettingsOfItsOwn_AreAllInTheExample()
    {
        var asked = AskedOfTheEnvironment().Matches(Compose).Select(m => m.Groups["name"].Value).Distinct();
        var shown = ExampleSetting().Matches(SourceTree.Text(".env.example")).Select(m => m.Groups["name"].Value);

        Assert.Equal(asked.Order(StringComparer.Ordinal), shown.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Example_Passwords_AreEmptyAndTheFilledInFileIsIgnored()
    {
        Assert.DoesNotMatch(@"(?m)^\w+_PASSWORD=.", SourceTree.Text(".env.example"));
        Assert.Contains(".env", SourceTree.Text(".gitignore").Split('\n'));
    }

    [Fact]
    public void Compose_IsNoDemo() => Assert.DoesNotContain("LABVOLATILITY_DEMO", Compose + Image, StringComparison.Ordinal);

    [Fact]
    public async Task Compose_HealthCheck_IsACommandOfTheExecutable()
    {
        var command = HealthCommand().Match(Compose).Groups["command"].Value;
        using var output = new StringWriter();
        var world = new CommandWorld(_ => "http://127.0.0.1:1", output, output);

        var code = await CommandLine.TryRunAsync([command], world);

        Assert.Equal(CommandLine.Failed, code);
        Assert.Contains("does not answer", output.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Image_RunsAsAUserWithoutRights()
    {
        var user = Image.IndexOf("USER $APP_UID", StringComparison.Ordinal);

        Assert.InRange(user, Image.LastIndexOf("\nRUN ", StringComparison.Ordinal), Image.IndexOf("ENTRYPOINT", StringComparison.Ordinal));
        Assert.DoesNotContain("USER", Image[(user + 1)..], StringComparison.Ordinal);
    }

    [Fact]
    public void Image_Bases_AreOfTheFrameworkThatIsBuiltFor()
    {
        var framework = TargetFramework().Match(SourceTree.Text("Directory.Build.props")).Groups["version"].Value;
        var bases = Base().Matches(Image).Select(m => m.Groups["tag"].Value).ToList();

        Assert.Equal([framework, framework], bases);
    }

    [Fact]
    public void Image_RestoresEveryProjectByItsLockFile()
    {
        var locks = SourceTree.Files("src", "packages.lock.json");

        Assert.All(locks, path => Assert.Contains($" {path} ", Image, StringComparison.Ordinal));
        Assert.Contains("--locked-mode", Image, StringComparison.Ordinal);
    }

    [GeneratedRegex("""(?<=ports:(?:\n {6}- .*)*)\n {6}- "?(?<port>[^"\n]+)""")]
    private static partial Regex PublishedPort();

    [GeneratedRegex(@"(?:PASSWORD: |Password=)(?<value>.*)")]
    private static partial Regex PasswordGiven();

    [GeneratedRegex(@"\$\{(?<name>\w+)")]
    private static partial Regex AskedOfTheEnvironment();

    [GeneratedRegex(@"(?m)^#?(?<name>LABVOLATILITY_\w+)=")]
    private static partial Regex ExampleSetting();

    [GeneratedRegex(@"""\./LabVolatility\.Web"", ""(?<command>\w+)""")]
    private static partial Regex HealthCommand();

    [GeneratedRegex(@"<TargetFramework>net(?<version>[\d.]+)<")]
    private static partial Regex TargetFramework();

    [GeneratedRegex(@"(?m)^FROM \S+:(?<tag>\S+)")]
    private static partial Regex Base();
}
