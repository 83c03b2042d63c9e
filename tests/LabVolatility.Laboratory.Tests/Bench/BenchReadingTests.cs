using LabVolatility.Laboratory.Bench;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Bench;

/// <summary>What stands in the fields of a triple expansion, understood or asked about.</summary>
public sealed class BenchReadingTests
{
    [Fact]
    public void Read_HalfARow_AsksForTheOtherHalf()
    {
        var (_, _, problems) = BenchReading.Read(new BenchEntry { Expands = true, Expansions = [new("1.8"), new(null, "60.8"), new(" ", "")] });

        Assert.Equal(["/readings/expansions/0/pressure", "/readings/expansions/1/volume"], problems.Select(p => p.Field));
    }

    // What was typed for the other way stays in the draft and is not reported.
    [Fact]
    public void Read_OneWayPicked_LeavesTheOtherOut()
    {
        var both = new BenchEntry { GasPressure = "2.7", LiquidVolume = "1", Expansions = [new("1.8", "65.3")] };

        var given = BenchReading.Read(both).Readings;
        var expanded = BenchReading.Read(both with { Expands = true }).Readings;

        Assert.Equal((true, 0, true), (given.GasPressure is not null, given.Expansions.Count, given.LiquidVolume is null));
        Assert.Equal((true, 1, true), (expanded.GasPressure is null, expanded.Expansions.Count, expanded.LiquidVolume is not null));
    }

    [Theory]
    [InlineData("3.5", "whole number"), InlineData("21", "0 to 20"), InlineData("three", "")]
    public void Read_RinsesThatCantBe_AreAskedAbout(string typed, string why)
    {
        var (_, handling, problems) = BenchReading.Read(new BenchEntry { RinseCycles = typed });

        Assert.Null(handling.RinseCycles);
        Assert.Equal("/handling/rinseCycles", problems.Single().Field);
        Assert.Contains(why, problems.Single().Message, StringComparison.Ordinal);
    }
}
