using Bunit;
using LabVolatility.Web.Layout;
using Xunit;

namespace LabVolatility.Web.Tests.Layout;

public sealed class StatusMarkTests : BunitContext
{
    public static TheoryData<Mark> All => [.. Enum.GetValues<Mark>()];

    [Theory, MemberData(nameof(All))]
    public void StatusMark_EachStatus_HasWordAndShape(Mark mark)
    {
        var drawn = Render<StatusMark>(p => p.Add(m => m.Mark, mark));

        Assert.NotEmpty(drawn.FindAll("path"));
        Assert.Equal(MarkShapes.Of(mark).Word, drawn.Find(".mark > span").TextContent);
        Assert.Equal("true", drawn.Find("svg").GetAttribute("aria-hidden"));
    }

    [Fact]
    public void MarkShapes_NoTwo_LookAlikeWithoutColour()
    {
        var shapes = Enum.GetValues<Mark>().Select(m => MarkShapes.Of(m) with { Word = "", Tone = "" }).ToList();

        Assert.Equal(shapes.Count, shapes.Distinct().Count());
    }

    [Fact]
    public void MarkShapes_NoTwo_ShareAWord()
    {
        var words = Enum.GetValues<Mark>().Select(m => MarkShapes.Of(m).Word).ToList();

        Assert.Equal(words.Count, words.Distinct().Count());
    }
}
