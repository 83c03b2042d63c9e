namespace LabVolatility.Core.Quantities;

/// <summary>Symbols of the temperature units.</summary>
public static class TemperatureUnits
{
    /// <summary>All units, °C first.</summary>
    public static IReadOnlyList<TemperatureUnit> All { get; } = Enum.GetValues<TemperatureUnit>();

    /// <summary>The symbol that the interface uses: "degC", "degF", "K".</summary>
    public static string Symbol(this TemperatureUnit unit) => unit switch
    {
        TemperatureUnit.Celsius => "degC",
        TemperatureUnit.Fahrenheit => "degF",
        TemperatureUnit.Kelvin => "K",
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "No such temperature unit."),
    };

    /// <summary>The symbol as people write it: "°C", "°F", "K".</summary>
    public static string Display(this TemperatureUnit unit) =>
        unit.Symbol().Replace("deg", "°", StringComparison.Ordinal);

    /// <summary>Reads a symbol exactly as <see cref="Symbol"/> writes it; false for anything else.</summary>
    public static bool TryParse(string? symbol, out TemperatureUnit unit)
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
}
