using Xunit;

namespace LabVolatility.Web.Tests.Architecture;

public sealed class UnfinishedCodeTests
{
    [Theory]
    [InlineData("NotImplementedException")]
    [InlineData("TODO")]
    [InlineData("FIXME")]
    public void Sources_All_AreFinished(string mark) =>
        Rule.HasNo(SourceTree.Files("src", ".cs", ".razor").Where(path => SourceTree.Text(path).Contains(mark, StringComparison.Ordinal)));
}
