using Bunit;
using LabVolatility.Core.Methods;
using LabVolatility.Web.Layout;
using Xunit;

namespace LabVolatility.Web.Tests.Layout;

public sealed class FindingListTests : BunitContext
{
    [Fact]
    public void FindingList_WarningAndBlocking_BlockingFirstAndInWords()
    {
        IReadOnlyList<Finding> findings =
        [
            new("hazy", FindingSeverity.Warning, "The sample is hazy."),
            new("two-phases", FindingSeverity.Blocking, "There are two phases."),
        ];

        var list = Render<FindingList>(p => p.Add(l => l.Findings, findings));

        var rows = list.FindAll("li").Select(r => r.TextContent.Trim()).ToList();
        Assert.Equal(["Blocks reporting: There are two phases.", "Warning: The sample is hazy."], rows);
        Assert.Equal("polite", list.Find("[role=status]").GetAttribute("aria-live"));
    }
}
