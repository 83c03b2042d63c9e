using CsCheck;
using LabVolatility.Core.Quantities;
using Xunit;

namespace LabVolatility.Core.Tests.Quantities;

public sealed class TemperatureTests
{
    // Source: definitions of the scales, NIST SP 811 (2008).
    public static TheoryData<decimal, TemperatureUnit, TemperatureUnit, decimal> Pairs => new()
    {
        { 37.8m, TemperatureUnit.Celsius, TemperatureUnit.Fahrenheit, 100.04m },
        { 37.8m, TemperatureUnit.Celsius, TemperatureUnit.Kelvin, 310.95m },
        { 212m, TemperatureUnit.Fahrenheit, TemperatureUnit.Celsius, 100m },
        { 32m, TemperatureUnit.Fahrenheit, TemperatureUnit.Kelvin, 273.15m },
        { 293.15m, TemperatureUnit.Kelvin, TemperatureUnit.Celsius, 20m },
    };

    [Theory, MemberData(nameof(Pairs))]
    public void In_OtherUnit_IsExact(decimal value, TemperatureUnit from, TemperatureUnit to, decimal expected) =>
        Assert.Equal(expected, Temperature.From(value, from).In(to));

    [Fact]
    public void In_ThereAndBack_IsTheSameNumber() =>
        Gen.Decimal[1m, 1000m].Sample(kelvin =>
        {
            var fahrenheit = Temperature.From(kelvin, TemperatureUnit.Kelvin).In(TemperatureUnit.Fahrenheit);
            return Math.Abs(Temperature.From(fahrenheit, TemperatureUnit.Fahrenheit).In(TemperatureUnit.Kelvin) - kelvin) < 1e-20m;
        });

    [Fact]
    public void TryFrom_AbsoluteZeroAndBelow_IsRefused()
    {
        Assert.False(Temperature.TryFrom(-273.15m, TemperatureUnit.Celsius, out _));
        Assert.False(Temperature.TryFrom(-459.67m, TemperatureUnit.Fahrenheit, out _));
        Assert.False(Temperature.TryFrom(decimal.MinValue, TemperatureUnit.Kelvin, out _));
        Assert.True(Temperature.TryFrom(-273.14m, TemperatureUnit.Celsius, out _));
    }

    [Fact]
    public void Volume_Barrel_IsFortyTwoGallons()
    {
        var barrel = Volume.From(1m, VolumeUnit.Barrel);

        Assert.Equal(158.987294928m, barrel.In(VolumeUnit.Litre));
        Assert.False(Volume.TryFrom(-1m, VolumeUnit.Litre, out _));
    }
}
