using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Bench;

/// <summary>Reads the bench's fields: every problem beside its field, all at once, nothing thrown away.</summary>
public static class BenchReading
{
    public static (ReadingsAsTyped Readings, HandlingAsTyped Handling, IReadOnlyList<Problem> Problems) Read(BenchEntry entry)
    {
        var problems = new List<Problem>();
        var readings = new ReadingsAsTyped
        {
            TotalPressure = Pressure(entry.TotalPressure, "/readings/totalPressure", problems),
            Temperature = Temperature(entry.Temperature, "/readings/temperature", problems),
            VaporLiquidRatio = Number(entry.VaporLiquidRatio, 0.01m, 100m, "/readings/vaporLiquidRatio", problems),
        };
        var handling = new HandlingAsTyped
        {
            ChilledTo = Temperature(entry.ChilledTo, "/handling/chilledTo", problems),
            FillPercent = Number(entry.FillPercent, 1m, 100m, "/handling/fillPercent", problems)?.Value,
            AirSaturated = entry.AirSaturated,
            Hazy = entry.Hazy ?? false,
            Phases = entry.Phases ?? 1,
            Confirmed = entry.Confirmed,
        };
        return (readings, handling, problems);
    }

    private static TypedReading? Pressure(string? typed, string field, List<Problem> problems)
    {
        if (string.IsNullOrWhiteSpace(typed))
            return null;
        if (QuantityText.TryReadPressure(typed, PressureUnit.Kilopascal, out var pressure, out var problem))
            return Reading.Of(typed, pressure);
        problems.Add(new Problem(field, problem!));
        return null;
    }

    private static TypedReading? Temperature(string? typed, string field, List<Problem> problems)
    {
        if (string.IsNullOrWhiteSpace(typed))
            return null;
        if (QuantityText.TryReadTemperature(typed, TemperatureUnit.Celsius, out var temperature, out var problem))
            return Reading.Of(typed, temperature);
        problems.Add(new Problem(field, problem!));
        return null;
    }

    private static TypedReading? Number(string? typed, decimal low, decimal high, string field, List<Problem> problems)
    {
        if (string.IsNullOrWhiteSpace(typed))
            return null;
        if (QuantityText.TryReadNumber(typed, low, high, out var number, out var problem))
            return Reading.Of(typed, number);
        problems.Add(new Problem(field, problem!));
        return null;
    }
}
