using System.Runtime.CompilerServices;

namespace LabVolatility.Web.Tests.Architecture;

/// <summary>The repository's files, as they were when this project was built.</summary>
internal static class SourceTree
{
    private static readonly string[] Made = ["bin", "obj"];

    public static string Root { get; } = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(ThisFile())!, "..", "..", ".."));

    /// <summary>The hand-written files below a folder whose name ends in one of <paramref name="endings"/>; paths relative to the root, with slashes.</summary>
    public static IReadOnlyList<string> Files(string folder, params string[] endings)
    {
        var found = Directory.EnumerateFiles(Path.Combine(Root, folder), "*", SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(Root, path).Replace('\\', '/'))
            .Where(path => !path.Split('/').Intersect(Made).Any() && endings.Any(ending => path.EndsWith(ending, StringComparison.Ordinal)))
            .Order(StringComparer.Ordinal)
            .ToList();
        return found.Count > 0 ? found : throw new InvalidOperationException($"No file of {string.Join(", ", endings)} below {folder}: a rule would hold for nothing.");
    }

    public static string Text(string path) => File.ReadAllText(Path.Combine(Root, path));

    private static string ThisFile([CallerFilePath] string path = "") => path;
}
