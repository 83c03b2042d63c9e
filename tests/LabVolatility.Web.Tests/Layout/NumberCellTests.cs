using Bunit;
using LabVolatility.Web.Layout;
using Xunit;

namespace LabVolatility.Web.Tests.Layout;

public sealed class NumberCellTests : BunitContext
{
    [Fact]
    public void NumberCell_TextAsReported_KeepsItsZeros()
    {
        var cell = Render<NumberCell>(p => p.Add(c => c.Text, "62.10").Add(c => c.Unit, "kPa").Add(c => c.Places, 2));

        Assert.Equal("62.10 kPa", cell.Find(".num").TextContent.Trim());
        Assert.Equal(".10", cell.Find(".num-part").TextContent);
    }

    [Fact]
    public void NumberCell_NoNumber_SaysSo()
    {
        var cell = Render<NumberCell>(p => p.Add(c => c.Value, (decimal?)null));

        Assert.Equal("not set", cell.Find(".num").TextContent.Trim());
    }

    [Fact]
    public void NumberCell_Negative_HasAMinusSign()
    {
        var cell = Render<NumberCell>(p => p.Add(c => c.Value, -0.4m));

        Assert.Equal("\u22120.4", cell.Find(".num").TextContent.Trim());
    }
}
