namespace LabVolatility.Core.Quantities;

/// <summary>The units a temperature may be read or reported in.</summary>
public enum TemperatureUnit
{
    /// <summary>°C.</summary>
    Celsius,

    /// <summary>°F.</summary>
    Fahrenheit,

    /// <summary>K.</summary>
    Kelvin,
}
