using System.Text.RegularExpressions;
using Xunit;

namespace LabVolatility.Web.Tests.Architecture;

/// <summary>The application loads nothing from another host, and sends nobody there.</summary>
public sealed partial class NothingFromElsewhereTests
{
    // Names of formats that are never fetched, and this machine.
    private static readonly string[] Allowed = ["www.w3.org", "json.schemastore.org", "schemas.microsoft.com", "127.0.0.1", "[::1]", "localhost"];

    [Fact]
    public void Sources_All_NameNoOtherHost()
    {
        var outside =
            from path in SourceTree.Files("src", ".cs", ".razor", ".css", ".js", ".html", ".svg", ".json", ".csproj", ".sql")
            from Match match in Address().Matches(SourceTree.Text(path))
            where !Allowed.Contains(match.Groups["host"].Value)
            select $"{path}: {match.Value}";

        Rule.HasNo(outside);
    }

    [GeneratedRegex(@"(?:https?|wss?)://(?<host>\[[0-9a-fA-F:]+\]|[^/\s:""'`<>)\\{}]+)")]
    private static partial Regex Address();
}
