namespace LabVolatility.Core.Quantities;

/// <summary>Reads a unit as people type it: any case, a few usual spellings.</summary>
internal static class UnitText
{
    public static bool TryPressure(string symbol, PressureUnit defaultUnit, out PressureUnit unit, out string? problem)
    {
        var typed = symbol.Equals("psia", StringComparison.OrdinalIgnoreCase) ? "psi" : symbol.ToLowerInvariant();
        unit = defaultUnit;
        var known = typed.Length == 0 || TryFind(PressureUnits.All, PressureUnits.Symbol, typed, out unit);
        problem = typed is "psig" or "kpag" or "barg"
            ? "That is a gauge pressure; enter the absolute pressure, for example 63.4 kPa."
            : known ? null : Unknown(symbol, "kPa, Pa, psi, bar, mbar, mmHg, inHg or atm");
        return problem is null;
    }

    public static bool TryTemperature(
        string symbol, TemperatureUnit defaultUnit, out TemperatureUnit unit, out string? problem)
    {
        var typed = symbol.ToLowerInvariant().Replace("°", "", StringComparison.Ordinal)
            .Replace("º", "", StringComparison.Ordinal).Replace("deg", "", StringComparison.Ordinal).Trim();
        (unit, var known) = typed switch
        {
            "" when symbol.Length == 0 => (defaultUnit, true),
            "c" => (TemperatureUnit.Celsius, true),
            "f" => (TemperatureUnit.Fahrenheit, true),
            "k" => (TemperatureUnit.Kelvin, true),
            _ => (default, false),
        };
        problem = known ? null : Unknown(symbol, "°C, °F or K");
        return known;
    }

    public static bool TryVolume(string symbol, VolumeUnit defaultUnit, out VolumeUnit unit, out string? problem)
    {
        var typed = symbol.ToLowerInvariant().Replace("m³", "m3", StringComparison.Ordinal);
        unit = defaultUnit;
        var known = typed.Length == 0 || TryFind(VolumeUnits.All, VolumeUnits.Symbol, typed, out unit);
        problem = known ? null : Unknown(symbol, "mL, L, m3 or bbl");
        return known;
    }

    private static bool TryFind<TUnit>(IReadOnlyList<TUnit> all, Func<TUnit, string> symbol, string typed, out TUnit unit)
        where TUnit : struct
    {
        foreach (var candidate in all)
        {
            if (symbol(candidate).Equals(typed, StringComparison.OrdinalIgnoreCase))
            {
                unit = candidate;
                return true;
            }
        }

        unit = default;
        return false;
    }

    private static string Unknown(string symbol, string known) => $"\"{symbol}\" is no unit here; use {known}.";
}
