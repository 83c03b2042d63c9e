using System.Text.Json;
using LabVolatility.Core.Published;
using LabVolatility.Web.Commands;
using Xunit;

namespace LabVolatility.Web.Tests.Commands;

public sealed class CommandLineTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("lab-commands-").FullName;

    public void Dispose()
    {
        Directory.Delete(_folder, recursive: true);
        GC.SuppressFinalize(this);
    }

    private async Task<(int? Code, string Output, string Error)> RunAsync(string data, params string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var world = new CommandWorld(name => name == "LABVOLATILITY_DATA" ? Path.Combine(_folder, data) : null, output, error);
        var code = await CommandLine.TryRunAsync(args, world);
        return (code, output.ToString(), error.ToString());
    }

    [Fact]
    public async Task Verify_AsJson_WritesNothingElseAndPasses()
    {
        var (code, output, error) = await RunAsync("none", "verify", "--json");

        using var json = JsonDocument.Parse(output);
        var checks = json.RootElement.GetProperty("checks").EnumerateArray().ToList();
        Assert.Equal(0, code);
        Assert.Empty(error);
        Assert.Equal(PublishedChecks.Run().Count, checks.Count);
        Assert.All(checks, c => Assert.True(c.GetProperty("passed").GetBoolean(), c.ToString()));
        Assert.All(checks, c => Assert.All(
            ["what", "source", "status", "expected", "computed", "difference", "tolerance"], name => Assert.True(c.TryGetProperty(name, out _))));
        Assert.False(Directory.Exists(Path.Combine(_folder, "none")));
    }

    [Fact]
    public async Task Verify_AsText_HasARowACheck()
    {
        var (code, output, _) = await RunAsync("none", "verify");

        Assert.Equal(0, code);
        Assert.Equal(PublishedChecks.Run().Count, output.Split('\n').Count(line => line.StartsWith("pass | ", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData()]
    [InlineData("--urls=http://127.0.0.1:0")]
    public async Task Arguments_WithoutCommand_ServeTheLaboratory(params string[] args) =>
        Assert.Null((await RunAsync("none", args)).Code);

    [Theory]
    [InlineData("nonsense")]
    [InlineData("verify", "--xml")]
    [InlineData("records")]
    [InlineData("user", "add", "somebody")]
    [InlineData("import", "file")]
    public async Task Command_Unknown_ListsTheCommands(params string[] args)
    {
        var (code, output, error) = await RunAsync("none", args);

        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.Contains("records check", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("replay")]
    [InlineData("records", "check")]
    [InlineData("backup", "copy.db")]
    public async Task Command_NoDatabase_IsRefusedAndMakesNone(params string[] args)
    {
        var (code, output, error) = await RunAsync("none", args);

        Assert.Equal(1, code);
        Assert.Empty(output);
        Assert.Contains("There is no database", error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(_folder, "none")));
    }

    [Fact]
    public async Task Laboratory_CopiedAndPutBack_IsWhole()
    {
        var copy = Path.Combine(_folder, "copy.db");

        var added = await RunAsync("first", "user", "add", "a.first", "--role", "shift-chemist");
        var twice = await RunAsync("first", "user", "add", "a.first", "--role", "analyst");
        var backedUp = await RunAsync("first", "backup", copy);
        var over = await RunAsync("first", "backup", copy);
        var restored = await RunAsync("second", "restore", copy);
        var restoredOver = await RunAsync("second", "restore", copy);
        var check = await RunAsync("second", "records", "check");
        var replay = await RunAsync("second", "replay");

        Assert.Equal([0, 1, 0, 1, 0, 1, 0, 0], new[] { added, twice, backedUp, over, restored, restoredOver, check, replay }.Select(r => r.Code!.Value));
        Assert.Matches("^[a-z0-9]{4}(-[a-z0-9]{4}){4}\\s*$", added.Output);
        Assert.Contains("taken", twice.Error, StringComparison.Ordinal);
        Assert.StartsWith("Intact:", check.Output, StringComparison.Ordinal);
        Assert.Contains("all equal", replay.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task User_UnknownRole_IsRefusedWithTheRoles()
    {
        var (code, output, error) = await RunAsync("third", "user", "add", "b.second", "--role", "captain");

        Assert.Equal(1, code);
        Assert.Empty(output);
        Assert.Contains("shift chemist", error, StringComparison.Ordinal);
    }
}
