using System.Globalization;
using LabVolatility.Core.Quantities;
using Xunit;

namespace LabVolatility.Core.Tests.Quantities;

public sealed class QuantityTextTests
{
    private static readonly string[] Cultures = ["en-US", "de-DE", "cs-CZ", "fr-FR"];

    public static TheoryData<string, decimal, PressureUnit> Pressures => new()
    {
        { "63.4", 63.4m, PressureUnit.Kilopascal }, { "63,4", 63.4m, PressureUnit.Kilopascal },
        { "9.1 psi", 9.1m, PressureUnit.Psi }, { " 62.1kPa", 62.1m, PressureUnit.Kilopascal },
        { "62.1\u00A0kPa ", 62.1m, PressureUnit.Kilopascal }, { "9,10 PSI", 9.10m, PressureUnit.Psi },
        { "0.621 bar", 0.621m, PressureUnit.Bar }, { "621 mbar", 621m, PressureUnit.Millibar },
        { "466 mmHg", 466m, PressureUnit.MillimetreOfMercury }, { "1.234 bar", 1.234m, PressureUnit.Bar },
        { "101,325 kPa", 101.325m, PressureUnit.Kilopascal }, { ".5 bar", 0.5m, PressureUnit.Bar },
        { "+60", 60m, PressureUnit.Kilopascal }, { "9.1 psia", 9.1m, PressureUnit.Psi },
    };

    public static TheoryData<string?, string> Refused => new()
    {
        { null, "Enter a number" }, { "  ", "Enter a number" }, { "S26-0412", "sample number" }, { "LV260412", "sample number" },
        { "1.234,5", "1234.5" }, { "1,234,5", "1234.5" }, { "1.2.3", "1234.5" }, { "1 234.5", "without a space" },
        { "63.4 torr", "no unit" }, { "-3", "0 to 3500 kPa" }, { "\u22123", "0 to 3500 kPa" }, { "4000", "0 to 3500 kPa" },
        { "9.1 psig", "gauge" }, { "sixty", "not a number" }, { "63.4 kPa kPa", "not a number" }, { "NaN", "not a number" },
        { "99999999999999999999999999999999", "too many digits" }, { "1.234", "may mean 1.234 or 1234" }, { "1,230 kPa", "write 1.2300 or 1230" },
        { "1e5", "no unit" },
    };

    [Theory, MemberData(nameof(Pressures))]
    public void TryReadPressure_AsTyped_IsRead(string text, decimal value, PressureUnit unit) => InEachCulture(() =>
    {
        var valid = QuantityText.TryReadPressure(text, PressureUnit.Kilopascal, out var pressure, out var problem);

        Assert.True(valid, problem);
        Assert.Equal((value, unit), (pressure.Value, pressure.Unit));
    });

    [Theory, MemberData(nameof(Refused))]
    public void TryReadPressure_Unclear_SaysWhy(string? text, string expected) => InEachCulture(() =>
    {
        var valid = QuantityText.TryReadPressure(text, PressureUnit.Kilopascal, out _, out var problem);

        Assert.False(valid);
        Assert.Contains(expected, problem, StringComparison.Ordinal);
    });

    [Theory]
    [InlineData("37,8 °C", TemperatureUnit.Celsius), InlineData("37.8", TemperatureUnit.Celsius), InlineData("37.8 degC", TemperatureUnit.Celsius)]
    [InlineData("37.8 °F", TemperatureUnit.Fahrenheit), InlineData("37.8f", TemperatureUnit.Fahrenheit), InlineData("37.8 K", TemperatureUnit.Kelvin)]
    public void TryReadTemperature_AsTyped_IsRead(string text, TemperatureUnit unit)
    {
        var valid = QuantityText.TryReadTemperature(text, TemperatureUnit.Celsius, out var temperature, out var problem);

        Assert.True(valid, problem);
        Assert.Equal((37.8m, unit), (temperature.Value, temperature.Unit));
    }

    [Fact]
    public void TryReadTemperature_TypographicMinus_IsBelowZero()
    {
        Assert.True(QuantityText.TryReadTemperature("\u22120,5", TemperatureUnit.Celsius, out var temperature, out _));
        Assert.Equal(-0.5m, temperature.Value);
        Assert.False(QuantityText.TryReadTemperature("-300", TemperatureUnit.Celsius, out _, out _));
        Assert.False(QuantityText.TryReadTemperature("20 °", TemperatureUnit.Celsius, out _, out _));
    }

    [Theory]
    [InlineData("250 mL", VolumeUnit.Millilitre), InlineData("250ml", VolumeUnit.Millilitre), InlineData("250 L", VolumeUnit.Litre), InlineData("250 m³", VolumeUnit.CubicMetre), InlineData("250 m3", VolumeUnit.CubicMetre), InlineData("250 bbl", VolumeUnit.Barrel)]
    public void TryReadVolume_AsTyped_IsRead(string text, VolumeUnit unit)
    {
        var valid = QuantityText.TryReadVolume(text, VolumeUnit.Millilitre, out var volume, out var problem);

        Assert.True(valid, problem);
        Assert.Equal((250m, unit), (volume.Value, volume.Unit));
    }

    [Theory]
    [InlineData("1.234", 0, 10, true), InlineData("1,234", 0, 10, true), InlineData("1,234", 1000, 2000, false)]
    [InlineData("1.234", 0, 5000, false), InlineData("0.500", 0, 5000, true), InlineData("75 %", 0, 100, true)]
    [InlineData("101", 0, 100, false), InlineData("75 kPa", 0, 100, false), InlineData("B75", 0, 100, false)]
    public void TryReadNumber_WithinAField_NeverGuesses(string text, int low, int high, bool expected)
    {
        var valid = QuantityText.TryReadNumber(text, low, high, out _, out var problem);

        Assert.Equal(expected, valid);
        Assert.Equal(expected, problem is null);
    }

    private static void InEachCulture(Action check)
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            foreach (var culture in Cultures)
            {
                CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
                check();
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
