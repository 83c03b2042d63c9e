namespace LabVolatility.Core.Quantities;

/// <summary>A volume, kept in the unit it was given in.</summary>
/// <remarks>Range 0 to 1 000 000 m³, both ends included; the default value is 0 mL.</remarks>
public readonly record struct Volume
{
    private const decimal HighestMillilitres = 1_000_000_000_000m;

    private Volume(decimal value, VolumeUnit unit) => (Value, Unit) = (value, unit);

    /// <summary>The number as given, in <see cref="Unit"/>.</summary>
    public decimal Value { get; }

    /// <summary>The unit that <see cref="Value"/> is in.</summary>
    public VolumeUnit Unit { get; }

    /// <summary>A volume that code vouches for.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is outside 0 to 1 000 000 m³.</exception>
    public static Volume From(decimal value, VolumeUnit unit) =>
        TryFrom(value, unit, out var volume)
            ? volume
            : throw new ArgumentOutOfRangeException(nameof(value), value, "A volume is 0 to 1 000 000 m³.");

    /// <summary>A volume that a person or program sent: false in place of an exception.</summary>
    public static bool TryFrom(decimal value, VolumeUnit unit, out Volume volume)
    {
        var valid = value >= 0 && value <= HighestMillilitres / unit.Millilitres();
        volume = valid ? new Volume(value, unit) : default;
        return valid;
    }

    /// <summary>The number in <paramref name="unit"/>; exact where that is the unit it was given in.</summary>
    public decimal In(VolumeUnit unit) =>
        unit == Unit ? Value : Value * Unit.Millilitres() / unit.Millilitres();

    /// <summary>Number and unit, for example "250 mL".</summary>
    public override string ToString() => $"{Rounding.Plain(Value)} {Unit.Symbol()}";
}
