using System.Globalization;
using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using Xunit;

namespace LabVolatility.Core.Tests.Limits;

public sealed class LimitPickerTests
{
    // An invented area with a derogation: winter by class D1, summer by class A with the allowance.
    private static readonly Area Coast = new(
        "COAST", "Coast", true,
        [
            new SeasonWindow("summer", new MonthDay(5, 1), new MonthDay(9, 30), Class: "EN228-A-W"),
            new SeasonWindow("winter", new MonthDay(10, 1), new MonthDay(4, 30), Class: "EN228-D1"),
        ],
        [], "invented for this test", FactStatus.Laboratory, null);

    private static readonly IReadOnlyList<Area> Areas = [.. PublishedAreas.All, Coast];

    // EPA, 40 CFR 1090.80: 1 May (retail 1 June) to 15 September.
    [Theory]
    [InlineData("2026-04-30", PointOfCompliance.Terminal, false), InlineData("2026-05-01", PointOfCompliance.Terminal, true)]
    [InlineData("2026-09-15", PointOfCompliance.Terminal, true), InlineData("2026-09-16", PointOfCompliance.Terminal, false)]
    [InlineData("2026-05-31", PointOfCompliance.Retail, false), InlineData("2026-06-01", PointOfCompliance.Retail, true)]
    [InlineData("2026-09-15", PointOfCompliance.Retail, true), InlineData("2026-09-16", PointOfCompliance.Retail, false)]
    public void Pick_UnitedStates_KeepsToTheSeason(string date, PointOfCompliance point, bool isInForce)
    {
        var pick = LimitPicker.Pick(Areas, Query("US-9.0", date, 9.8m) with { Point = point });

        Assert.Equal(isInForce, pick.Limits.Count == 1);
        Assert.Equal(isInForce, pick.NoLimit is null);
        Assert.Equal(isInForce ? "summer" : null, pick.Season);
    }

    [Fact]
    public void Pick_WithEthanol_GivesTheAllowanceAndSaysWhy()
    {
        var picked = LimitPicker.Pick(Areas, Query("US-9.0", "2026-05-10", 9.8m)).Limits[0];

        Assert.Equal((10.0m, 1.0m, "summer", "US-9.0"), (picked.EffectiveMaximum, picked.AllowanceGiven, picked.Season, picked.Area));
        Assert.Contains("1 May to 15 September", picked.Why, StringComparison.Ordinal);
        Assert.Contains("9.8 % (V/V) ethanol", picked.Why, StringComparison.Ordinal);
        Assert.Null(LimitPicker.Pick(Areas, Query("US-9.0", "2026-05-10", 9.8m) with { State = ProductState.Blendstock }).Limits[0].AllowanceGiven);
    }

    [Fact]
    public void Pick_FixedClass_HoldsAllTheYear()
    {
        var pick = LimitPicker.Pick(Areas, Query("EN228-D1", "2026-07-01", null));

        Assert.Equal(["DVPE", "E70", "VLI"], pick.Limits.Select(l => l.Limit.Quantity));
        Assert.Null(pick.Season);
        Assert.Null(pick.NoLimit);
    }

    // EN 228:2012+A1:2017: the grade with more than 5 % (V/V) ethanol, at most 3.7 % (m/m) oxygen, has E70 and VLI of its own.
    [Theory]
    [InlineData(null, "22.0", "1150"), InlineData("5.0", "22.0", "1150"), InlineData("5.1", "24.0", "1164"), InlineData("9.8", "24.0", "1164")]
    public void Pick_MoreEthanol_TakesTheRowsMadeForIt(string? ethanol, string e70, string vli)
    {
        var limits = LimitPicker.Pick(Areas, Query("EN228-D1", "2026-07-01", ethanol?.Number())).Limits.Select(l => l.Limit).ToList();

        Assert.Equal(["DVPE", "E70", "VLI"], limits.Select(l => l.Quantity));
        Assert.Equal((e70.Number(), vli.Number()), (limits[1].Minimum, limits[2].Maximum));
    }

    [Theory]
    [InlineData("2026-04-30", "winter", "90.0"), InlineData("2026-05-01", "summer", "68.0"), InlineData("2026-09-30", "summer", "68.0"), InlineData("2026-10-01", "winter", "90.0")]
    public void Pick_CalendarOfClasses_TakesTheClassInForce(string date, string season, string maximum)
    {
        var pick = LimitPicker.Pick(Areas, Query("COAST", date, 5m));

        var pressure = pick.Limits.Single(l => l.Limit.Quantity == "DVPE");
        Assert.Equal((season, maximum.Number(), "COAST"), (pick.Season, pressure.EffectiveMaximum, pressure.Area));
        Assert.Contains(season, pressure.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Pick_CalendarOfClasses_KeepsTheAreasOwnLimitsToo()
    {
        var contract = PublishedAreas.All.Single(a => a.Code == "EN228-A").Limits[0].Limit with { Key = "COAST/contract", Maximum = 58.0m };
        Area[] areas = [.. PublishedAreas.All, Coast with { Limits = [new AreaLimit(contract)] }];

        var pick = LimitPicker.Pick(areas, Query("COAST", "2026-07-01", null));

        Assert.Equal(["EN228-A-W/DVPE", "EN228-A-W/E70", "COAST/contract"], pick.Limits.Select(l => l.Limit.Key));
    }

    // Whether a derogation is in force is the asked area's to say.
    [Fact]
    public void Pick_CalendarWithoutDerogation_GetsNoAllowance()
    {
        Area[] areas = [.. PublishedAreas.All, Coast with { Derogation = false }];

        var pressure = LimitPicker.Pick(areas, Query("COAST", "2026-07-01", 5m)).Limits.Single(l => l.Limit.Quantity == "DVPE");

        Assert.Equal((60.0m, (decimal?)null), (pressure.EffectiveMaximum, pressure.AllowanceGiven));
        Assert.Contains("no derogation", pressure.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Pick_OutsideTheSeasons_KeepsLimitsOfAllTheYear()
    {
        var own = new AreaLimit(PublishedAreas.All.Single(a => a.Code == "EN228-D").Limits[0].Limit);
        var summerOnly = Coast with { Calendar = [Coast.Calendar[0]], Limits = [own] };

        var pick = LimitPicker.Pick([summerOnly], Query("COAST", "2026-01-10", null));

        Assert.Equal("EN228-D/DVPE", Assert.Single(pick.Limits).Limit.Key);
        Assert.Null(pick.Season);
    }

    [Fact]
    public void Pick_VersionsOfAnArea_TakesTheOneInForce()
    {
        var old = Coast with { Calendar = [], Limits = [new AreaLimit(PublishedAreas.All[0].Limits[0].Limit)], EffectiveUntil = new DateOnly(2026, 6, 30) };
        var next = old with { Name = "Coast, next", EffectiveFrom = new DateOnly(2026, 7, 1), EffectiveUntil = new DateOnly(2026, 12, 31) };

        Assert.StartsWith("Coast:", LimitPicker.Pick([old, next], Query("COAST", "2026-06-30", null)).Limits[0].Why, StringComparison.Ordinal);
        Assert.StartsWith("Coast, next:", LimitPicker.Pick([old, next], Query("COAST", "2026-07-01", null)).Limits[0].Why, StringComparison.Ordinal);
        Assert.Contains("no calendar in force", LimitPicker.Pick([old, next], Query("COAST", "2027-01-01", null)).NoLimit, StringComparison.Ordinal);
    }

    [Fact]
    public void Pick_OtherProducts_HaveNoGasolineLimit()
    {
        Assert.NotNull(LimitPicker.Pick(Areas, Query("EN228-A", "2026-07-01", null) with { Grade = "lpg" }).NoLimit);
        Assert.NotNull(LimitPicker.Pick(Areas, Query("EN228-A", "2026-07-01", null) with { Grade = "propane", Kind = SampleKind.Lpg }).NoLimit);
        Assert.Null(LimitPicker.Pick(Areas, Query("EN228-A", "2026-07-01", null) with { Grade = "E10", Kind = SampleKind.EthanolBlend }).NoLimit);
    }

    [Fact]
    public void Pick_UnknownArea_SaysSo() =>
        Assert.Contains("no area NOWHERE", LimitPicker.Pick(Areas, Query("NOWHERE", "2026-07-01", null)).NoLimit, StringComparison.Ordinal);

    [Fact]
    public void Pick_CalendarsThatNameOneAnother_EndWithAReason()
    {
        var loop = Coast with { Code = "LOOP", Calendar = [new SeasonWindow("all", new MonthDay(1, 1), new MonthDay(12, 31), Class: "LOOP")] };

        Assert.Contains("name one another", LimitPicker.Pick([loop], Query("LOOP", "2026-07-01", null)).NoLimit, StringComparison.Ordinal);
    }

    [Fact]
    public void Pick_OwnLimits_KeepToGradePointClassAndDates()
    {
        var limit = PublishedAreas.All[0].Limits[0].Limit with { EffectiveFrom = new DateOnly(2026, 7, 1), EffectiveUntil = new DateOnly(2026, 7, 31) };
        var area = Coast with
        {
            Calendar = [new SeasonWindow("all", new MonthDay(1, 1), new MonthDay(12, 31), Class: "L")],
            Limits = [new AreaLimit(limit, "Super", PointOfCompliance.Terminal, "all", "L")],
        };
        var query = Query("COAST", "2026-07-01", null) with { Grade = "Super" };

        Assert.Null(LimitPicker.Pick([area], query).NoLimit);
        Assert.Null(LimitPicker.Pick([area], query with { Date = new DateOnly(2026, 7, 31) }).NoLimit);
        Assert.NotNull(LimitPicker.Pick([area], query with { Date = new DateOnly(2026, 8, 1) }).NoLimit);
        Assert.NotNull(LimitPicker.Pick([area], query with { Date = new DateOnly(2026, 6, 30) }).NoLimit);
        Assert.NotNull(LimitPicker.Pick([area], query with { Grade = "Regular" }).NoLimit);
        Assert.NotNull(LimitPicker.Pick([area], query with { Point = PointOfCompliance.Retail }).NoLimit);
        Assert.NotNull(LimitPicker.Pick([area with { Limits = [area.Limits[0] with { Class = "M" }] }], query).NoLimit);
    }

    private static ProductQuery Query(string area, string date, decimal? ethanol) => new(
        "gasoline", ProductState.Finished, area, PointOfCompliance.Terminal,
        DateOnly.Parse(date, CultureInfo.InvariantCulture), ethanol);
}
