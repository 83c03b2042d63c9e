using Bunit;
using LabVolatility.Web.Bench;
using Xunit;

namespace LabVolatility.Web.Tests.Bench;

public sealed class ReadingFieldTests : BunitContext
{
    [Fact]
    public void ReadingField_ALabelOfOurs_IsRefusedAndSentOn()
    {
        string? taken = null, misplaced = null;
        var field = Render<ReadingField>(p => p
            .Add(f => f.Field, "/readings/totalPressure").Add(f => f.Value, "62.1")
            .Add(f => f.ValueChanged, v => taken = v).Add(f => f.Misplaced, v => misplaced = v));

        field.Find("input").Change("S2600417C011");

        Assert.Null(taken);
        Assert.Equal("S2600417C011", misplaced);
        Assert.Equal("62.1", field.Find("input").GetAttribute("value"));
        Assert.Contains("label, not a reading", field.Find(".problem").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void ReadingField_ANumber_IsKeptAsTyped()
    {
        string? taken = null;
        var field = Render<ReadingField>(p => p.Add(f => f.Field, "/readings/totalPressure").Add(f => f.ValueChanged, v => taken = v).Add(f => f.Echo, "62,1 → 62.1 kPa"));

        field.Find("input").Change(" 62,1 ");

        Assert.Equal(" 62,1 ", taken);
        Assert.Equal("text", field.Find("input").GetAttribute("type"));
        Assert.Equal("decimal", field.Find("input").GetAttribute("inputmode"));
        Assert.Equal("62,1 → 62.1 kPa", field.Find(".hint").TextContent);
    }

    [Theory]
    [InlineData("EN-13016-1", "EN 13016-1")]
    [InlineData("en-13016-1", "EN 13016-1")]
    [InlineData("ASTM D5191", "ASTM D5191")]
    [InlineData("nothing", "nothing")]
    public void BenchAddress_PartOfAnAddress_NamesTheMethod(string part, string method) => Assert.Equal(method, BenchAddress.Method(part));
}
