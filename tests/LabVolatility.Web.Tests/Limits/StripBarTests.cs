using Bunit;
using LabVolatility.Core.Limits;
using LabVolatility.Web.Limits;
using Xunit;

namespace LabVolatility.Web.Tests.Limits;

public sealed class StripBarTests : BunitContext
{
    private static readonly SeasonWindow Summer = new("summer", new MonthDay(5, 1), new MonthDay(9, 15), PointOfCompliance.Terminal);
    private static readonly SeasonWindow Winter = new("winter", new MonthDay(10, 1), new MonthDay(4, 30), Class: "EN228-D");

    [Fact]
    public void Of_WindowWithinTheYear_IsOneBarWithBothEndDays()
    {
        // 1 May is the 121st day of 2026, 15 September the 258th.
        var bar = Assert.Single(StripBar.Of([Summer], PointOfCompliance.Terminal, new DateOnly(2026, 9, 15)));

        Assert.Equal((120, 138), (bar.From, bar.Days));
        Assert.True(bar.InForce);
    }

    [Fact]
    public void Of_WindowThatWrapsTheYearEnd_IsTwoBars()
    {
        var bars = StripBar.Of([Winter], null, new DateOnly(2026, 1, 10));

        Assert.Equal([(0, 120), (273, 92)], bars.Select(b => (b.From, b.Days)));
        Assert.All(bars, bar => Assert.True(bar.InForce));
        Assert.All(bars, bar => Assert.Equal("winter · EN228-D", bar.Label));
    }

    [Fact]
    public void Of_WholeYear_FillsIt()
    {
        var year = new SeasonWindow("all", new MonthDay(1, 1), new MonthDay(12, 31));

        Assert.Equal((0, 366), Assert.Single(StripBar.Of([year], null, new DateOnly(2028, 2, 29))) is var bar ? (bar.From, bar.Days) : default);
    }

    [Fact]
    public void Of_OtherPoint_IsLeftOut() =>
        Assert.Empty(StripBar.Of([Summer], PointOfCompliance.Retail, new DateOnly(2026, 6, 1)));

    [Fact]
    public void Of_OverlappingWindows_StandInLanesOfTheirOwn()
    {
        var both = new SeasonWindow("transition", new MonthDay(4, 15), new MonthDay(5, 15));

        var bars = StripBar.Of([Winter, both, Summer], PointOfCompliance.Terminal, new DateOnly(2026, 6, 1));

        Assert.Equal([0, 0, 1, 0], bars.Select(b => b.Lane));
    }

    [Fact]
    public void YearStrip_PointsThatDiffer_GetARowEach()
    {
        var strip = Render<YearStrip>(p => p.Add(s => s.Calendar, [Summer]).Add(s => s.Today, new DateOnly(2026, 6, 1)));

        Assert.Contains("terminal", strip.Markup, StringComparison.Ordinal);
        Assert.Contains("retail", strip.Markup, StringComparison.Ordinal);
        Assert.Contains("summer, 1 May to 15 September, terminal", strip.Find("svg").GetAttribute("aria-label"), StringComparison.Ordinal);
    }
}
