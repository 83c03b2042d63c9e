using System.Text.RegularExpressions;
using Xunit;

namespace LabVolatility.Web.Tests.Architecture;

/// <summary>The guide leads nowhere that isn't there.</summary>
public sealed partial class GuideTests
{
    private const string Folder = "docs/guide";
    private const long MostBytes = 6_000_000;

    private static readonly string[] Chapters = [.. SourceTree.Files(Folder, ".md")];
    private static readonly string[] Pictures = [.. SourceTree.Files(Folder, ".webp")];

    [Fact]
    public void Links_OfTheGuide_LeadToFiles()
    {
        var broken =
            from chapter in Chapters
            from Match link in Link().Matches(SourceTree.Text(chapter))
            let target = Path.Combine(SourceTree.Root, Folder, link.Groups["file"].Value)
            where !File.Exists(target)
            select $"{chapter}: {link.Groups["file"].Value}";

        Rule.HasNo(broken);
    }

    [Fact]
    public void Pictures_OfTheGuide_AreAllShown()
    {
        var shown = string.Concat(Chapters.Select(SourceTree.Text));

        Rule.HasNo(Pictures.Where(picture => !shown.Contains(picture[$"{Folder}/".Length..], StringComparison.Ordinal)));
    }

    [Fact]
    public void Pictures_OfTheGuide_AreSmall() =>
        Assert.InRange(Pictures.Sum(picture => new FileInfo(Path.Combine(SourceTree.Root, picture)).Length), 1, MostBytes);

    [GeneratedRegex(@"\]\((?<file>[^)#:]+)[^):]*\)")]
    private static partial Regex Link();
}
