using System.Text.RegularExpressions;
using Xunit;

namespace LabVolatility.Web.Tests.Architecture;

public sealed partial class TestNamesTests
{
    [Fact]
    public void TestNames_All_HaveAtMostTwoUnderscores()
    {
        var names = SourceTree.Files("tests", ".cs").SelectMany(path => PublicMethod().Matches(SourceTree.Text(path))).Select(match => match.Groups["name"].Value).ToList();

        Assert.NotEmpty(names);
        Rule.HasNo(names.Where(name => name.Count(c => c == '_') > 2));
    }

    [Fact]
    public void Tests_All_Run() =>
        Rule.HasNo(SourceTree.Files("tests", ".cs").Where(path => Skip().IsMatch(SourceTree.Text(path))));

    [GeneratedRegex(@"\bpublic\s+(?:async\s+)?(?:void|Task|ValueTask)\s+(?<name>\w+)\s*\(")]
    private static partial Regex PublicMethod();

    [GeneratedRegex(@"\[(?:Fact|Theory)[^\]\n]*\bSkip\w*\s*=")]
    private static partial Regex Skip();
}
