namespace LabVolatility.Core.Quantities;

/// <summary>Symbols and exact sizes of the pressure units.</summary>
public static class PressureUnits
{
    /// <summary>All units, kPa first.</summary>
    public static IReadOnlyList<PressureUnit> All { get; } = Enum.GetValues<PressureUnit>();

    /// <summary>The symbol that the interface and the screens use: "kPa", "psi", "mmHg".</summary>
    public static string Symbol(this PressureUnit unit) => unit switch
    {
        PressureUnit.Kilopascal => "kPa",
        PressureUnit.Pascal => "Pa",
        PressureUnit.Psi => "psi",
        PressureUnit.Bar => "bar",
        PressureUnit.Millibar => "mbar",
        PressureUnit.MillimetreOfMercury => "mmHg",
        PressureUnit.InchOfMercury => "inHg",
        PressureUnit.Atmosphere => "atm",
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "No such pressure unit."),
    };

    /// <summary>Reads a symbol exactly as <see cref="Symbol"/> writes it; false for anything else.</summary>
    public static bool TryParse(string? symbol, out PressureUnit unit)
    {
        foreach (var candidate in All)
        {
            if (candidate.Symbol() == symbol)
            {
                unit = candidate;
                return true;
            }
        }

        unit = default;
        return false;
    }

    /// <summary>Converts a number of one unit into another: exact but for the one division.</summary>
    /// <param name="value">A pressure or a difference of pressures in <paramref name="from"/>.</param>
    /// <param name="from">The unit it is in.</param>
    /// <param name="to">The unit asked for.</param>
    /// <remarks>Source: NIST SP 811 (2008), appendix B.8, by each unit's exact definition.</remarks>
    public static decimal Convert(decimal value, PressureUnit from, PressureUnit to)
    {
        if (from == to)
            return value;
        var (numerator, denominator) = Kilopascals(from);
        var (toNumerator, toDenominator) = Kilopascals(to);
        return value * (numerator * toDenominator) / (denominator * toNumerator);
    }

    /// <summary>The unit's size in kPa as an exact fraction.</summary>
    /// <remarks>
    /// Source: psi from the pound (0.45359237 kg), standard gravity (9.80665 m/s²) and the inch (25.4 mm);
    /// mmHg conventional, 13595.1 kg/m³; all exact by definition (NIST SP 811, 2008, appendix B).
    /// </remarks>
    internal static (decimal Numerator, decimal Denominator) Kilopascals(PressureUnit unit) => unit switch
    {
        PressureUnit.Kilopascal => (1m, 1m),
        PressureUnit.Pascal => (1m, 1000m),
        PressureUnit.Psi => (4.4482216152605m, 0.64516m),
        PressureUnit.Bar => (100m, 1m),
        PressureUnit.Millibar => (1m, 10m),
        PressureUnit.MillimetreOfMercury => (0.133322387415m, 1m),
        PressureUnit.InchOfMercury => (3.386388640341m, 1m),
        PressureUnit.Atmosphere => (101.325m, 1m),
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "No such pressure unit."),
    };
}
