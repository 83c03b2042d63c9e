using System.Diagnostics.CodeAnalysis;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Laboratory.Bench;

/// <summary>Between readings as typed and the core's quantities.</summary>
internal static class Reading
{
    public static TypedReading Of(string typed, AbsolutePressure pressure) => new(typed, pressure.Value, pressure.Unit.Symbol());

    public static TypedReading Of(string typed, Temperature temperature) => new(typed, temperature.Value, temperature.Unit.Symbol());

    public static TypedReading Of(string typed, decimal number) => new(typed, number, "");

    [return: NotNullIfNotNull(nameof(reading))]
    public static AbsolutePressure? Pressure(TypedReading? reading) =>
        reading is null ? null
        : PressureUnits.TryParse(reading.Unit, out var unit) ? AbsolutePressure.From(reading.Value, unit)
        : throw new InvalidOperationException($"A stored pressure has the unit \"{reading.Unit}\".");

    [return: NotNullIfNotNull(nameof(reading))]
    public static Temperature? Temperature(TypedReading? reading) =>
        reading is null ? null
        : TemperatureUnits.TryParse(reading.Unit, out var unit) ? Core.Quantities.Temperature.From(reading.Value, unit)
        : throw new InvalidOperationException($"A stored temperature has the unit \"{reading.Unit}\".");
}
