using Bunit;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Web.Bench;
using Xunit;

namespace LabVolatility.Web.Tests.Bench;

public sealed class GasFieldsTests : BunitContext
{
    private BenchEntry _entry = new() { GasPressure = "2.7" };

    [Fact]
    public void GasFields_AsGiven_AskForOneReading()
    {
        var fields = Show();

        Assert.Equal(["2.7"], fields.FindAll("input.number").Select(i => i.GetAttribute("value")));
    }

    // Each row is taken for itself; the others stay as they were typed.
    [Fact]
    public void GasFields_ThreeExpansions_KeepEachRowAsTyped()
    {
        var fields = Show();
        fields.FindAll("input[name=gas]")[1].Change(true);
        fields.Render(p => p.Add(f => f.Entry, _entry));
        Assert.Equal(7, fields.FindAll("input.number").Count);

        fields.Find("#field-readings-expansions-1-pressure").Change("60,8");
        fields.Find("#field-readings-expansions-0-volume").Change("1.8 mL");

        Assert.True(_entry.Expands);
        Assert.Equal([new("1.8 mL"), new(null, "60,8"), new()], _entry.Expansions);
        Assert.Equal("2.7", _entry.GasPressure);
    }

    private IRenderedComponent<GasFields> Show() => Render<GasFields>(p => p
        .Add(f => f.Entry, _entry).Add(f => f.Problems, []).Add(f => f.Changed, change => _entry = change(_entry)));
}
