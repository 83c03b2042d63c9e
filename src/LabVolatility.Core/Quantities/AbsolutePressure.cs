namespace LabVolatility.Core.Quantities;

/// <summary>An absolute pressure, kept in the unit it was read in.</summary>
/// <remarks>
/// Range 0 to 3500 kPa, both ends included; the default value is 0 kPa. Two are equal when number and unit are
/// the same; to order two of unlike units, compare them <see cref="In"/> one unit.
/// </remarks>
public readonly record struct AbsolutePressure
{
    private const decimal HighestKilopascals = 3500m;

    private AbsolutePressure(decimal value, PressureUnit unit) => (Value, Unit) = (value, unit);

    /// <summary>The number as read, in <see cref="Unit"/>.</summary>
    public decimal Value { get; }

    /// <summary>The unit that <see cref="Value"/> is in.</summary>
    public PressureUnit Unit { get; }

    /// <summary>A pressure that code vouches for.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is outside 0 to 3500 kPa.</exception>
    public static AbsolutePressure From(decimal value, PressureUnit unit) =>
        TryFrom(value, unit, out var pressure)
            ? pressure
            : throw new ArgumentOutOfRangeException(nameof(value), value, "An absolute pressure is 0 to 3500 kPa.");

    /// <summary>A pressure that a person or program sent: false in place of an exception.</summary>
    public static bool TryFrom(decimal value, PressureUnit unit, out AbsolutePressure pressure)
    {
        var (numerator, denominator) = PressureUnits.Kilopascals(unit);
        var valid = value >= 0 && value <= HighestKilopascals * denominator / numerator;
        pressure = valid ? new AbsolutePressure(value, unit) : default;
        return valid;
    }

    /// <summary>The number in <paramref name="unit"/>; exact where that is the unit it was read in.</summary>
    public decimal In(PressureUnit unit) => PressureUnits.Convert(Value, Unit, unit);

    /// <summary>Number and unit, for example "63.4 kPa".</summary>
    public override string ToString() => $"{Rounding.Shown(Value)} {Unit.Symbol()}";
}
