using CsCheck;
using LabVolatility.Core.Quantities;
using Xunit;

namespace LabVolatility.Core.Tests.Quantities;

public sealed class RoundingTests
{
    // Worked by hand: a tie goes to the even digit (ASTM E29, 40 CFR 1090.50(a)).
    public static TheoryData<decimal, int, decimal> Ties => new()
    {
        { 9.05m, 1, 9.0m }, { 9.15m, 1, 9.2m }, { 60.15m, 1, 60.2m }, { 61.85m, 1, 61.8m }, { -9.05m, 1, -9.0m },
        { 40.5m, 0, 40m }, { 56.5m, 0, 56m }, { 35950m, -2, 36000m }, { 36050m, -2, 36000m }, { 36150m, -2, 36200m },
        { -36150m, -2, -36200m }, { 6.345m, 2, 6.34m }, { 6.3450000000000000000000000001m, 2, 6.35m },
    };

    public static TheoryData<decimal, int, string> Texts => new()
    {
        { 63.77m, 1, "63.8" }, { 63m, 1, "63.0" }, { 9.102m, 2, "9.10" }, { -0.04m, 1, "0.0" },
        { 62057m, -2, "62100" }, { 0.4m, 0, "0" },
    };

    [Theory, MemberData(nameof(Ties))]
    public void ToPlaces_Tie_GoesToEven(decimal value, int places, decimal expected) =>
        Assert.Equal(expected, Rounding.ToPlaces(value, places));

    [Theory, MemberData(nameof(Texts))]
    public void Text_Value_KeepsItsZeros(decimal value, int places, string expected) =>
        Assert.Equal(expected, Rounding.Text(value, places));

    [Fact]
    public void Plain_TrailingZeros_AreLeftOut() => Assert.Equal("63.77", Rounding.Plain(63.7700m));

    [Fact]
    public void Shown_ManyDecimals_AreCutAndSaidSo()
    {
        Assert.Equal("68.947572…", Rounding.Shown(68.94757293168361m));
        Assert.Equal("9.05048", Rounding.Shown(9.05048m));
    }

    [Fact]
    public void ToPlaces_AnyValue_IsWithinHalfAStep() =>
        Gen.Select(Gen.Decimal[-100000m, 100000m], Gen.Int[-3, 6]).Sample((value, places) =>
        {
            var step = 1m;
            for (var i = 0; i < Math.Abs(places); i++)
                step = places > 0 ? step / 10m : step * 10m;
            var rounded = Rounding.ToPlaces(value, places);
            return Math.Abs(rounded - value) <= step / 2m && rounded % step == 0;
        });

    [Fact]
    public void ToPlaces_TooManyPlaces_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Rounding.ToPlaces(1m, 29));
}
