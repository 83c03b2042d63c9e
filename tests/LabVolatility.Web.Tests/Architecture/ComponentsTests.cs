using System.Text.RegularExpressions;
using Xunit;

namespace LabVolatility.Web.Tests.Architecture;

public sealed partial class ComponentsTests
{
    [Fact]
    public void Markup_OfComponents_HasNoCodeBlock() =>
        Rule.HasNo(SourceTree.Files("src", ".razor").Where(path => CodeBlock().IsMatch(SourceTree.Text(path))));

    [GeneratedRegex(@"^\s*@(code|functions)\b", RegexOptions.Multiline)]
    private static partial Regex CodeBlock();
}
