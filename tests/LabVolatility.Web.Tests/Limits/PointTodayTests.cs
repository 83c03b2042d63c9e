using LabVolatility.Core.Limits;
using LabVolatility.Web.Limits;
using Xunit;

namespace LabVolatility.Web.Tests.Limits;

public sealed class PointTodayTests
{
    // 40 CFR 1090.80: before retail from 1 May, at retail from 1 June.
    [Fact]
    public void Of_DayBetweenTheTwoSeasons_TellsThePointsApart()
    {
        var points = PointToday.Of(PublishedAreas.All, "US-9.0", new DateOnly(2026, 5, 10));

        Assert.Equal(["summer: RVP by EPA at most 9.0 psi", "no limit for gasoline"], points.Select(p => p.Words));
    }

    [Fact]
    public void Of_DayWhenBothAreAlike_IsOneLine()
    {
        var point = Assert.Single(PointToday.Of(PublishedAreas.All, "US-9.0", new DateOnly(2026, 7, 10)));

        Assert.Null(point.Point);
    }
}
