namespace LabVolatility.Core.Quantities;

/// <summary>Reads what people type: "9.1 psi", "63,4", " 62.1kPa", "37,8 °C".</summary>
/// <remarks>
/// A point or a comma is a decimal mark, never a thousands separator. Text that may mean two things is asked
/// about, not guessed: each problem says what is wrong and gives an example.
/// </remarks>
public static class QuantityText
{
    /// <summary>An absolute pressure within 0 to 3500 kPa.</summary>
    /// <param name="text">What was typed, with or without a unit.</param>
    /// <param name="defaultUnit">The unit when none was typed.</param>
    /// <param name="pressure">The pressure, in the unit typed.</param>
    /// <param name="problem">What is wrong, in words; null when it could be read.</param>
    public static bool TryReadPressure(
        string? text, PressureUnit defaultUnit, out AbsolutePressure pressure, out string? problem)
    {
        pressure = default;
        if (!TypedQuantity.TrySplit(text, "63.4 or 9.1 psi", out var number, out var symbol, out problem)
            || !UnitText.TryPressure(symbol, defaultUnit, out var unit, out problem)
            || !TypedQuantity.TryNumber(number, v => AbsolutePressure.TryFrom(v, unit, out _), out var value, out problem))
        {
            return false;
        }

        if (!AbsolutePressure.TryFrom(value, unit, out pressure))
            problem = "A pressure is absolute, 0 to 3500 kPa: for example 63.4 or 9.1 psi.";
        return problem is null;
    }

    /// <summary>A temperature above 0 K and up to 1000 K.</summary>
    /// <param name="text">What was typed, with or without a unit.</param>
    /// <param name="defaultUnit">The unit when none was typed.</param>
    /// <param name="temperature">The temperature, in the unit typed.</param>
    /// <param name="problem">What is wrong, in words; null when it could be read.</param>
    public static bool TryReadTemperature(
        string? text, TemperatureUnit defaultUnit, out Temperature temperature, out string? problem)
    {
        temperature = default;
        if (!TypedQuantity.TrySplit(text, "37.8 or 100 °F", out var number, out var symbol, out problem)
            || !UnitText.TryTemperature(symbol, defaultUnit, out var unit, out problem)
            || !TypedQuantity.TryNumber(number, v => Temperature.TryFrom(v, unit, out _), out var value, out problem))
        {
            return false;
        }

        if (!Temperature.TryFrom(value, unit, out temperature))
            problem = "A temperature is above 0 K, up to 1000 K: for example 37.8 or 100 °F.";
        return problem is null;
    }

    /// <summary>A volume of 0 to 1 000 000 m³.</summary>
    /// <param name="text">What was typed, with or without a unit.</param>
    /// <param name="defaultUnit">The unit when none was typed.</param>
    /// <param name="volume">The volume, in the unit typed.</param>
    /// <param name="problem">What is wrong, in words; null when it could be read.</param>
    public static bool TryReadVolume(
        string? text, VolumeUnit defaultUnit, out Volume volume, out string? problem)
    {
        volume = default;
        if (!TypedQuantity.TrySplit(text, "250 mL or 1 L", out var number, out var symbol, out problem)
            || !UnitText.TryVolume(symbol, defaultUnit, out var unit, out problem)
            || !TypedQuantity.TryNumber(number, v => Volume.TryFrom(v, unit, out _), out var value, out problem))
        {
            return false;
        }

        if (!Volume.TryFrom(value, unit, out volume))
            problem = "A volume is 0 to 1 000 000 m³: for example 250 mL or 1 L.";
        return problem is null;
    }

    /// <summary>A bare number without a unit, such as a fill level, a ratio or an ethanol content.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="low">The lowest plausible number, included.</param>
    /// <param name="high">The highest plausible number, included.</param>
    /// <param name="value">The number.</param>
    /// <param name="problem">What is wrong, in words; null when it could be read.</param>
    public static bool TryReadNumber(string? text, decimal low, decimal high, out decimal value, out string? problem)
    {
        value = default;
        var example = Rounding.Plain(low + Rounding.ToPlaces((high - low) / 2m, 1));
        if (!TypedQuantity.TrySplit(text, example, out var number, out var symbol, out problem))
            return false;
        if (symbol.Length > 0 && symbol != "%")
        {
            problem = $"Only a number belongs here, without \"{symbol}\": for example {example}.";
            return false;
        }

        if (!TypedQuantity.TryNumber(number, v => v >= low && v <= high, out var read, out problem))
            return false;
        if (read < low || read > high)
        {
            problem = $"It should be {Rounding.Plain(low)} to {Rounding.Plain(high)}: for example {example}.";
            return false;
        }

        value = read;
        return true;
    }
}
