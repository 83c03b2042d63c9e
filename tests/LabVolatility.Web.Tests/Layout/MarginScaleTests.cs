using Bunit;
using LabVolatility.Web.Layout;
using Xunit;

namespace LabVolatility.Web.Tests.Layout;

public sealed class MarginScaleTests : BunitContext
{
    [Fact]
    public void MarginScale_GuardedMaximum_TellsEdgesAndHatchesTheZone()
    {
        var scale = Render<MarginScale>(p => p
            .Add(s => s.Maximum, 60.0m).Add(s => s.AcceptanceMaximum, 58.6m).Add(s => s.Value, 59.1m).Add(s => s.Unit, "kPa").Add(s => s.Digits, 1));

        Assert.Equal("value 59.1 kPa, maximum 60.0, accepted up to 58.6", scale.Find("svg").GetAttribute("aria-label"));
        Assert.Single(scale.FindAll("[data-zone=undecided]"));
        Assert.Single(scale.FindAll("[data-zone=value]"));
    }

    [Fact]
    public void MarginScale_NoLimit_SaysSo()
    {
        var scale = Render<MarginScale>(p => p.Add(s => s.Unit, "kPa"));

        Assert.Equal("no limit", scale.Find("svg").GetAttribute("aria-label"));
        Assert.Empty(scale.FindAll("[data-zone]"));
    }
}
