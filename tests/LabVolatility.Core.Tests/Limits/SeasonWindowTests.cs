using System.Globalization;
using CsCheck;
using LabVolatility.Core.Limits;
using Xunit;

namespace LabVolatility.Core.Tests.Limits;

public sealed class SeasonWindowTests
{
    private static readonly SeasonWindow Winter = new("winter", new MonthDay(10, 1), new MonthDay(4, 30));

    [Theory]
    [InlineData("2026-09-30", false), InlineData("2026-10-01", true), InlineData("2026-12-31", true), InlineData("2027-01-01", true)]
    [InlineData("2027-04-30", true), InlineData("2027-05-01", false)]
    public void Contains_OverTheYearEnd_IncludesBothEnds(string date, bool expected) =>
        Assert.Equal(expected, Winter.Contains(Day(date)));

    [Theory]
    [InlineData("2028-02-29", true), InlineData("2027-02-28", true), InlineData("2027-03-01", false), InlineData("2028-03-01", false)]
    public void Contains_UntilLeapDay_EndsWithFebruary(string date, bool expected) =>
        Assert.Equal(expected, new SeasonWindow("cold", new MonthDay(2, 1), new MonthDay(2, 29)).Contains(Day(date)));

    [Fact]
    public void Contains_OneDay_IsThatDay()
    {
        var window = new SeasonWindow("day", new MonthDay(5, 1), new MonthDay(5, 1));

        Assert.True(window.Contains(Day("2026-05-01")));
        Assert.False(window.Contains(Day("2026-05-02")));
    }

    [Theory, InlineData(2, 29, true), InlineData(2, 30, false), InlineData(13, 1, false), InlineData(0, 1, false), InlineData(4, 31, false), InlineData(4, 0, false)]
    public void TryFrom_DayOfNoYear_IsRefused(int month, int day, bool expected) =>
        Assert.Equal(expected, MonthDay.TryFrom(month, day, out _));

    // A window and the one that fills the rest of the year share no day and leave none out.
    [Fact]
    public void Contains_TwoHalvesOfTheYear_LeaveNoGap() =>
        Gen.Select(Gen.Int[0, 3000], Gen.Int[0, 300], Gen.Int[1, 60]).Sample((offset, start, length) =>
        {
            var first = new DateOnly(2026, 1, 1).AddDays(start);
            var last = first.AddDays(length);
            var window = Between(first, last);
            var rest = Between(last.AddDays(1), first.AddDays(-1));
            var date = new DateOnly(2026, 1, 1).AddDays(offset);
            return (date.Month == 2 && date.Day == 29) || window.Contains(date) != rest.Contains(date);
        });

    private static SeasonWindow Between(DateOnly first, DateOnly last) =>
        new("any", new MonthDay(first.Month, first.Day), new MonthDay(last.Month, last.Day));

    private static DateOnly Day(string date) => DateOnly.Parse(date, CultureInfo.InvariantCulture);
}
