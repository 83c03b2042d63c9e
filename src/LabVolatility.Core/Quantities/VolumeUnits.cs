namespace LabVolatility.Core.Quantities;

/// <summary>Symbols and exact sizes of the volume units.</summary>
public static class VolumeUnits
{
    /// <summary>All units, mL first.</summary>
    public static IReadOnlyList<VolumeUnit> All { get; } = Enum.GetValues<VolumeUnit>();

    /// <summary>The symbol that the interface uses: "mL", "L", "m3", "bbl".</summary>
    public static string Symbol(this VolumeUnit unit) => unit switch
    {
        VolumeUnit.Millilitre => "mL",
        VolumeUnit.Litre => "L",
        VolumeUnit.CubicMetre => "m3",
        VolumeUnit.Barrel => "bbl",
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "No such volume unit."),
    };

    /// <summary>Reads a symbol exactly as <see cref="Symbol"/> writes it; false for anything else.</summary>
    public static bool TryParse(string? symbol, out VolumeUnit unit)
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

    /// <summary>The unit's size in mL, exact.</summary>
    /// <remarks>Source: the barrel is 42 gallons of 231 cubic inches of 16.387064 mL (NIST SP 811, 2008).</remarks>
    internal static decimal Millilitres(this VolumeUnit unit) => unit switch
    {
        VolumeUnit.Millilitre => 1m,
        VolumeUnit.Litre => 1000m,
        VolumeUnit.CubicMetre => 1_000_000m,
        VolumeUnit.Barrel => 158_987.294928m,
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "No such volume unit."),
    };
}
