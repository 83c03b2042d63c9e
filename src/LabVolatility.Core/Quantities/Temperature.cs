namespace LabVolatility.Core.Quantities;

/// <summary>A temperature, kept in the unit it was read in.</summary>
/// <remarks>Range above 0 K to 1000 K; the default value is 0 °C. Converted in decimal.</remarks>
public readonly record struct Temperature
{
    private const decimal HighestKelvin = 1000m;

    private Temperature(decimal value, TemperatureUnit unit) => (Value, Unit) = (value, unit);

    /// <summary>The number as read, in <see cref="Unit"/>.</summary>
    public decimal Value { get; }

    /// <summary>The unit that <see cref="Value"/> is in.</summary>
    public TemperatureUnit Unit { get; }

    /// <summary>A temperature that code vouches for.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not above 0 K and at most 1000 K.</exception>
    public static Temperature From(decimal value, TemperatureUnit unit) =>
        TryFrom(value, unit, out var temperature)
            ? temperature
            : throw new ArgumentOutOfRangeException(nameof(value), value, "A temperature is above 0 K, up to 1000 K.");

    /// <summary>A temperature that a person or program sent: false in place of an exception.</summary>
    public static bool TryFrom(decimal value, TemperatureUnit unit, out Temperature temperature)
    {
        var valid = Math.Abs(value) < 10_000m && IsPhysical(Convert(value, unit, TemperatureUnit.Kelvin));
        temperature = valid ? new Temperature(value, unit) : default;
        return valid;
    }

    /// <summary>The number in <paramref name="unit"/>; exact where that is the unit it was read in.</summary>
    public decimal In(TemperatureUnit unit) => Convert(Value, Unit, unit);

    /// <summary>Number and unit, for example "37.8 °C".</summary>
    public override string ToString() => $"{Rounding.Plain(Value)} {Unit.Display()}";

    private static bool IsPhysical(decimal kelvin) => kelvin is > 0 and <= HighestKelvin;

    private static decimal Convert(decimal value, TemperatureUnit from, TemperatureUnit to)
    {
        if (from == to)
            return value;
        var celsius = from switch
        {
            TemperatureUnit.Fahrenheit => (value - 32m) * 5m / 9m,
            TemperatureUnit.Kelvin => value - 273.15m,
            _ => value,
        };
        return to switch
        {
            TemperatureUnit.Fahrenheit => (celsius * 9m / 5m) + 32m,
            TemperatureUnit.Kelvin => celsius + 273.15m,
            _ => celsius,
        };
    }
}
