using CsCheck;
using LabVolatility.Core.Quantities;
using Xunit;

namespace LabVolatility.Core.Tests.Quantities;

public sealed class AbsolutePressureTests
{
    private static readonly Gen<PressureUnit> Units = Gen.Int[0, PressureUnits.All.Count - 1].Select(i => PressureUnits.All[i]);

    // Source: NIST SP 811 (2008), appendix B; the exact definitions worked out to the digits shown.
    public static TheoryData<decimal, PressureUnit, decimal, int> Kilopascals => new()
    {
        { 1m, PressureUnit.Psi, 6.894757293168m, 12 },
        { 1m, PressureUnit.Atmosphere, 101.325m, 12 },
        { 760m, PressureUnit.MillimetreOfMercury, 101.3250144354m, 10 },
        { 1m, PressureUnit.InchOfMercury, 3.386388640341m, 12 },
        { 1m, PressureUnit.Bar, 100m, 12 },
        { 1013.25m, PressureUnit.Millibar, 101.325m, 12 },
        { 62100m, PressureUnit.Pascal, 62.1m, 12 },
    };

    [Theory, MemberData(nameof(Kilopascals))]
    public void In_Kilopascals_IsTheDefinition(decimal value, PressureUnit unit, decimal expected, int places)
    {
        var pressure = AbsolutePressure.From(value, unit);

        Assert.Equal(expected, Rounding.ToPlaces(pressure.In(PressureUnit.Kilopascal), places));
    }

    [Fact]
    public void In_ThereAndBack_IsTheSameNumber() =>
        Gen.Select(Gen.Decimal[0.001m, 10m], Units, Units).Sample((value, from, to) =>
        {
            var there = AbsolutePressure.From(value, from).In(to);
            var back = PressureUnits.Convert(there, to, from);
            return Math.Abs(back - value) <= value * 1e-20m;
        });

    [Fact]
    public void In_OwnUnit_IsAsRead() => Assert.Equal(9.10m, AbsolutePressure.From(9.10m, PressureUnit.Psi).In(PressureUnit.Psi));

    [Theory, InlineData(0), InlineData(3500)]
    public void TryFrom_EndsOfRange_AreTaken(int kpa) =>
        Assert.True(AbsolutePressure.TryFrom(kpa, PressureUnit.Kilopascal, out _));

    [Fact]
    public void TryFrom_OutsideRange_IsRefused()
    {
        Assert.False(AbsolutePressure.TryFrom(-0.1m, PressureUnit.Kilopascal, out _));
        Assert.False(AbsolutePressure.TryFrom(3500.1m, PressureUnit.Kilopascal, out _));
        Assert.False(AbsolutePressure.TryFrom(decimal.MaxValue, PressureUnit.Pascal, out _));
        Assert.Throws<ArgumentOutOfRangeException>(() => AbsolutePressure.From(600m, PressureUnit.Psi));
    }

    [Fact]
    public void Symbol_EveryUnit_ReadsBack()
    {
        Assert.Equal(["kPa", "Pa", "psi", "bar", "mbar", "mmHg", "inHg", "atm"], PressureUnits.All.Select(u => u.Symbol()));
        Assert.All(PressureUnits.All, unit => Assert.True(PressureUnits.TryParse(unit.Symbol(), out var read) && read == unit));
        Assert.False(PressureUnits.TryParse("KPA", out _));
        Assert.False(PressureUnits.TryParse(null, out _));
    }

    [Fact]
    public void ToAbsolute_Gauge_AddsTheBarometer()
    {
        var barometer = AbsolutePressure.From(1m, PressureUnit.Atmosphere);

        var absolute = GaugePressure.From(1400m, PressureUnit.Kilopascal).ToAbsolute(barometer);

        Assert.Equal(1501.325m, absolute!.Value.Value);
        Assert.Null(GaugePressure.From(-110m, PressureUnit.Kilopascal).ToAbsolute(barometer));
    }

    // 0.1 kPa or 0.01 psi, and the nearest decade of the others.
    [Theory]
    [InlineData(PressureUnit.Kilopascal, "62.1"), InlineData(PressureUnit.Psi, "9.01"), InlineData(PressureUnit.Bar, "0.621")]
    [InlineData(PressureUnit.Millibar, "621"), InlineData(PressureUnit.Pascal, "62100"), InlineData(PressureUnit.MillimetreOfMercury, "466")]
    [InlineData(PressureUnit.InchOfMercury, "18.34"), InlineData(PressureUnit.Atmosphere, "0.613")]
    public void Places_OfEachUnit_AreTheMethodsResolution(PressureUnit unit, string expected)
    {
        var pressure = AbsolutePressure.From(62.1m, PressureUnit.Kilopascal);

        Assert.Equal(expected, Rounding.Text(pressure.In(unit), PressureResolution.Places(unit)));
    }
}
