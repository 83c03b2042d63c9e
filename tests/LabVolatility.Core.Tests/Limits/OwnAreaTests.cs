using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using Xunit;

namespace LabVolatility.Core.Tests.Limits;

/// <summary>An area of the laboratory's own: its calendar names classes, its own limits hold on top. Areas and figures made up.</summary>
public sealed class OwnAreaTests
{
    private static readonly Area North = new(
        "NORTH", "Area north", false,
        [new("summer", new(5, 1), new(9, 30), Class: "EN228-A"), new("winter", new(10, 1), new(4, 14), Class: "EN228-D")],
        [new(Contract("contract"))], "made up", FactStatus.Laboratory, null);

    [Fact]
    public void Pick_WindowNamesAClass_OwnLimitHoldsOnTop()
    {
        var pick = Pick([North], new DateOnly(2026, 6, 1));

        Assert.Equal(["EN228-A/DVPE", "EN228-A/E70", "contract"], pick.Limits.Select(l => l.Limit.Key));
        Assert.Equal("summer", pick.Season);
    }

    [Fact]
    public void Pick_NoSeasonInForce_OwnLimitHoldsAllTheYear()
    {
        var pick = Pick([North], new DateOnly(2026, 4, 20));

        Assert.Equal("contract", Assert.Single(pick.Limits).Limit.Key);
        Assert.Null(pick.NoLimit);
    }

    [Fact]
    public void Pick_LimitOfASeason_IsNotTakenOutsideIt()
    {
        var area = North with { Limits = [new(Contract("summer contract"), Season: "summer")] };

        Assert.Contains(Pick([area], new DateOnly(2026, 6, 1)).Limits, l => l.Limit.Key == "summer contract");
        Assert.DoesNotContain(Pick([area], new DateOnly(2026, 11, 1)).Limits, l => l.Limit.Key == "summer contract");
        Assert.Empty(Pick([area], new DateOnly(2026, 4, 20)).Limits);
    }

    [Fact]
    public void Pick_VersionsOfACalendar_EachHoldsOnItsDays()
    {
        var first = North with { EffectiveUntil = new DateOnly(2026, 12, 31) };
        var second = North with { EffectiveFrom = new DateOnly(2027, 1, 1), Calendar = [new("summer", new(4, 1), new(9, 30), Class: "EN228-B")] };

        Assert.Contains(Pick([first, second], new DateOnly(2026, 6, 1)).Limits, l => l.Limit.Key == "EN228-A/DVPE");
        Assert.Contains(Pick([first, second], new DateOnly(2027, 6, 1)).Limits, l => l.Limit.Key == "EN228-B/DVPE");
        Assert.Contains("no calendar in force on 2027-06-01", Pick([first], new DateOnly(2027, 6, 1)).NoLimit, StringComparison.Ordinal);
    }

    [Theory, InlineData(true), InlineData(false)]
    public void Pick_ClassWithAnAllowance_AsksTheAreasOwnDerogation(bool granted)
    {
        var area = North with { Derogation = granted, Calendar = [new("summer", new(5, 1), new(9, 30), Class: "EN228-A-W")] };

        var limit = Pick([area], new DateOnly(2026, 6, 1), ethanol: 5m).Limits.Single(l => l.Limit.Key == "EN228-A-W/DVPE");

        // Directive 98/70/EC, annex III: 8.0 kPa at 5 % (V/V).
        Assert.Equal(granted ? (68.0m, 8.0m) : (60.0m, null), (limit.EffectiveMaximum, limit.AllowanceGiven));
    }

    private static LimitPick Pick(IReadOnlyList<Area> own, DateOnly day, decimal? ethanol = null) => LimitPicker.Pick(
        [.. PublishedAreas.All, .. own], new ProductQuery("gasoline", ProductState.Finished, "NORTH", PointOfCompliance.Terminal, day, ethanol));

    private static Limit Contract(string key) => new(
        key, "DVPE", null, null, 58.0m, "kPa", 1, [], null, new NoAllowance(), Standing.Contract, "made up", FactStatus.Laboratory, null, null, true, null);
}
