using CsCheck;
using LabVolatility.Core.Limits;
using Xunit;

namespace LabVolatility.Core.Tests.Limits;

public sealed class StrictestTests
{
    private static readonly Limit Template = PublishedAreas.All.Single(a => a.Code == "EN228-A").Limits[0].Limit;

    [Fact]
    public void Of_SeveralClasses_TakesTheStrictestOfEachSide()
    {
        var strictest = Assert.Single(Strictest.Of([Picked("EN228-C", 50.0m, 80.0m), Picked("EN228-B", 45.0m, 70.0m)]));

        Assert.Equal(("EN228-C", "EN228-B", false), (strictest.Minimum!.Area, strictest.Maximum!.Area, strictest.IsEmpty));
    }

    [Fact]
    public void Of_ClassesApart_LeaveNothingAndProposeToSplit()
    {
        var strictest = Assert.Single(Strictest.Of([Picked("EN228-A", 45.0m, 60.0m), Picked("EN228-F", 70.0m, 100.0m)]));

        Assert.True(strictest.IsEmpty);
        Assert.Contains("split the destinations, EN228-F apart from EN228-A", strictest.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_MinimumEqualToMaximum_LeavesThatValue() =>
        Assert.False(Assert.Single(Strictest.Of([Picked("A", 45.0m, 60.0m), Picked("D", 60.0m, 90.0m)])).IsEmpty);

    [Fact]
    public void Of_MinimumOneStepAbove_LeavesNothing() =>
        Assert.True(Assert.Single(Strictest.Of([Picked("A", 45.0m, 60.0m), Picked("D", 60.1m, 90.0m)])).IsEmpty);

    // 9.0 psi still passes 9.05 psi = 62.40 kPa; 62 kPa still passes 62.5 kPa: the psi limit binds, though 9.0 psi is 62.05 kPa.
    [Fact]
    public void Of_UnlikeUnits_ComparesWhatStillPasses()
    {
        var psi = Picked("PSI", null, 9.0m, "psi");
        var kpa = Picked("KPA", null, 62m, "kPa", digits: 0);

        Assert.Equal("PSI", Assert.Single(Strictest.Of([psi, kpa])).Maximum!.Area);
        Assert.Equal("KPA", Assert.Single(Strictest.Of([psi, kpa], Comparison.Absolute)).Maximum!.Area);
    }

    [Fact]
    public void Of_UnlikeMethodsOrCorrelations_StayApart()
    {
        var european = Picked("EN", 45.0m, 60.0m);
        var american = european with { Limit = Template with { RefereeMethod = "ASTM D5191" } };
        var federal = european with { Limit = Template with { Quantity = "RVP", Correlation = "EPA" } };

        Assert.Equal(3, Strictest.Of([european, american, federal]).Count);
    }

    [Fact]
    public void Of_OneMoreLimit_NeverLoosens() =>
        Gen.Select(Gen.Int[400, 700], Gen.Int[700, 1000]).Array[2, 6].Sample(edges =>
        {
            var all = edges.Select((edge, i) => Picked($"A{i}", edge.Item1 / 10m, edge.Item2 / 10m)).ToList();
            var some = Strictest.Of([.. all.Take(all.Count - 1)])[0];
            var more = Strictest.Of(all)[0];
            return more.Minimum!.EffectiveMinimum >= some.Minimum!.EffectiveMinimum
                && more.Maximum!.EffectiveMaximum <= some.Maximum!.EffectiveMaximum;
        });

    private static PickedLimit Picked(string area, decimal? minimum, decimal? maximum, string unit = "kPa", int digits = 1) =>
        new(Template with { Minimum = minimum, Maximum = maximum, Unit = unit, Digits = digits }, area, null, minimum, maximum, null, "");
}
