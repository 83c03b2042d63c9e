using System.Diagnostics.CodeAnalysis;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Laboratory.Bench;

/// <summary>Between readings as typed and the core's quantities.</summary>
internal static class Reading
{
    public static TypedReading Of(string typed, AbsolutePressure pressure) => new(typed, pressure.Value, pressure.Unit.Symbol());

    public static TypedReading Of(string typed, Temperature temperature) => new(typed, temperature.Value, temperature.Unit.Symbol());

    public static TypedReading Of(string typed, Volume volume) => new(typed, volume.Value, volume.Unit.Symbol());

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

    [return: NotNullIfNotNull(nameof(reading))]
    public static Volume? Volume(TypedReading? reading) =>
        reading is null ? null
        : VolumeUnits.TryParse(reading.Unit, out var unit) ? Core.Quantities.Volume.From(reading.Value, unit)
        : throw new InvalidOperationException($"A stored volume has the unit \"{reading.Unit}\".");

    /// <summary>All that a method is asked with.</summary>
    public static Readings Quantities(ReadingsAsTyped readings, HandlingAsTyped handling) => new()
    {
        TotalPressure = Pressure(readings.TotalPressure),
        GasPressure = Pressure(readings.GasPressure),
        Expansions = [.. readings.Expansions.Select(e => new Expansion(Volume(e.Volume).Value, Pressure(e.Pressure).Value))],
        LiquidVolume = Volume(readings.LiquidVolume),
        IntroductionTemperature = Temperature(readings.IntroductionTemperature),
        Temperature = Temperature(readings.Temperature),
        VaporLiquidRatio = readings.VaporLiquidRatio?.Value,
        BarometricPressure = Pressure(readings.BarometricPressure),
        ChilledTo = Temperature(handling.ChilledTo),
        AtEquilibrium = handling.AtEquilibrium,
        RinseCycles = handling.RinseCycles,
        ConsecutiveDeterminations = handling.ConsecutiveDeterminations,
        FirstTestOnContainer = true,
    };
}
