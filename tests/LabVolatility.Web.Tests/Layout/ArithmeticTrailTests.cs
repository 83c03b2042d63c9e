using Bunit;
using LabVolatility.Core.Methods;
using LabVolatility.Web.Layout;
using Xunit;

namespace LabVolatility.Web.Tests.Layout;

public sealed class ArithmeticTrailTests : BunitContext
{
    private static readonly IReadOnlyList<ArithmeticStep> Steps =
    [
        new("Reading", "as read", 70.0m, "kPa", "instrument"),
        new("Correlation", "0.965 · 70.0 − 3.78", 63.77m, "kPa", "ASTM D5191"),
    ];

    [Fact]
    public void Trail_Opened_ShowsEachStepWithItsSource()
    {
        var trail = Drawn();

        trail.Find("button").Click();

        var steps = trail.FindAll("li");
        Assert.Equal(2, steps.Count);
        Assert.Contains("63.77 kPa", steps[1].TextContent, StringComparison.Ordinal);
        Assert.Contains("ASTM D5191", steps[1].TextContent, StringComparison.Ordinal);
        Assert.Equal("true", trail.Find("button").GetAttribute("aria-expanded"));
    }

    [Fact]
    public void Trail_Escape_Closes()
    {
        var trail = Drawn();
        trail.Find("button").Click();

        trail.Find("button").KeyDown("Escape");

        Assert.Empty(trail.FindAll("li"));
    }

    private IRenderedComponent<ArithmeticTrail> Drawn() => Render<ArithmeticTrail>(p => p
        .Add(t => t.Steps, Steps).Add(t => t.Spoken, "DVPE 63.8 kPa").AddChildContent("63.8"));
}
