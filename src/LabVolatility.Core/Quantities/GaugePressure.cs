namespace LabVolatility.Core.Quantities;

/// <summary>A pressure above the surrounding air, kept in the unit it was read in.</summary>
/// <remarks>Range −150 to 3500 kPa; the default value is 0 kPa. It says nothing absolute without a barometer.</remarks>
public readonly record struct GaugePressure
{
    private const decimal LowestKilopascals = -150m;
    private const decimal HighestKilopascals = 3500m;

    private GaugePressure(decimal value, PressureUnit unit) => (Value, Unit) = (value, unit);

    /// <summary>The number as read, in <see cref="Unit"/>.</summary>
    public decimal Value { get; }

    /// <summary>The unit that <see cref="Value"/> is in.</summary>
    public PressureUnit Unit { get; }

    /// <summary>A gauge pressure that code vouches for.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is outside −150 to 3500 kPa.</exception>
    public static GaugePressure From(decimal value, PressureUnit unit) =>
        TryFrom(value, unit, out var pressure)
            ? pressure
            : throw new ArgumentOutOfRangeException(nameof(value), value, "A gauge pressure is −150 to 3500 kPa.");

    /// <summary>A gauge pressure that a person or program sent: false in place of an exception.</summary>
    public static bool TryFrom(decimal value, PressureUnit unit, out GaugePressure pressure)
    {
        var (numerator, denominator) = PressureUnits.Kilopascals(unit);
        var valid = value >= LowestKilopascals * denominator / numerator
            && value <= HighestKilopascals * denominator / numerator;
        pressure = valid ? new GaugePressure(value, unit) : default;
        return valid;
    }

    /// <summary>The number in <paramref name="unit"/>; exact where that is the unit it was read in.</summary>
    public decimal In(PressureUnit unit) => PressureUnits.Convert(Value, Unit, unit);

    /// <summary>The absolute pressure at the local barometer, in this gauge's unit.</summary>
    /// <param name="barometer">The air pressure at the gauge, not reduced to sea level.</param>
    /// <returns>Null where the sum is below zero or above 3500 kPa.</returns>
    public AbsolutePressure? ToAbsolute(AbsolutePressure barometer) =>
        AbsolutePressure.TryFrom(Value + barometer.In(Unit), Unit, out var absolute) ? absolute : null;
}
