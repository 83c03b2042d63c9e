using Xunit;

namespace LabVolatility.Web.Tests.Architecture;

/// <summary>A folder is a word of the laboratory, never of a layer.</summary>
public sealed class FoldersTests
{
    private static readonly string[] Words =
    [
        // what is calculated
        "Quantities", "Methods", "Precision", "Curves", "Limits", "Charts", "Blending", "Assessment", "Published",
        // what is kept and shown
        "Today", "Samples", "Bench", "Instruments", "Batches", "Trends", "Certificates", "Records", "People", "Setup",
        "Storage", "Demo", "Documents", "Account", "Api", "Commands", "Layout",
        // the engines, the fonts of a certificate, and what the framework wants
        "Sqlite", "Postgres", "Fonts", "Migrations", "Properties", "wwwroot",
    ];

    public static TheoryData<string> Projects => ["LabVolatility.Core", "LabVolatility.Laboratory", "LabVolatility.Web"];

    [Theory, MemberData(nameof(Projects))]
    public void Folders_BelowAProject_AreWordsOfTheTrade(string project) =>
        Rule.HasNo(FoldersOf(project).Where(folder => folder.Split('/').Except(Words).Any()));

    [Theory, MemberData(nameof(Projects))]
    public void Folders_BelowAProject_AreAtMostTwoDeep(string project) =>
        Rule.HasNo(FoldersOf(project).Where(folder => folder.Split('/').Count(word => word != "Migrations") > 2));

    // Only folders that hold a file: an empty one is in nobody's clone. What lies in wwwroot is named for the browser.
    private static IEnumerable<string> FoldersOf(string project) =>
        SourceTree.Files($"src/{project}", "")
            .Select(path => Path.GetDirectoryName(path[$"src/{project}/".Length..])!.Replace('\\', '/'))
            .Where(folder => folder.Length > 0 && !folder.StartsWith("wwwroot", StringComparison.Ordinal))
            .Distinct();
}
