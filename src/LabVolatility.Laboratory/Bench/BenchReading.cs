using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Bench;

/// <summary>Reads the bench's fields: every problem beside its field, all at once, nothing thrown away.</summary>
public static class BenchReading
{
    private const decimal MostRuns = 20m;

    public static (ReadingsAsTyped Readings, HandlingAsTyped Handling, IReadOnlyList<Problem> Problems) Read(BenchEntry entry)
    {
        var problems = new List<Problem>();
        var readings = new ReadingsAsTyped
        {
            TotalPressure = Pressure(entry.TotalPressure, "/readings/totalPressure", problems),
            Temperature = Temperature(entry.Temperature, "/readings/temperature", problems),
            VaporLiquidRatio = Number(entry.VaporLiquidRatio, 0.01m, 100m, "/readings/vaporLiquidRatio", problems),
            GasPressure = entry.Expands ? null : Pressure(entry.GasPressure, "/readings/gasPressure", problems),
            Expansions = entry.Expands ? Expansions(entry.Expansions, problems) : [],
            LiquidVolume = entry.Expands ? Volume(entry.LiquidVolume, "/readings/liquidVolume", problems) : null,
            IntroductionTemperature = Temperature(entry.IntroductionTemperature, "/readings/introductionTemperature", problems),
        };
        var handling = new HandlingAsTyped
        {
            ChilledTo = Temperature(entry.ChilledTo, "/handling/chilledTo", problems),
            FillPercent = Number(entry.FillPercent, 1m, 100m, "/handling/fillPercent", problems)?.Value,
            AirSaturated = entry.AirSaturated,
            Hazy = entry.Hazy ?? false,
            Phases = entry.Phases ?? 1,
            AtEquilibrium = entry.AtEquilibrium,
            RinseCycles = Whole(entry.RinseCycles, 0m, "/handling/rinseCycles", problems),
            ConsecutiveDeterminations = Whole(entry.ConsecutiveDeterminations, 1m, "/handling/consecutiveDeterminations", problems),
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

    // A row of which nothing is typed isn't there; half a row is a problem of its own.
    private static List<ExpansionAsTyped> Expansions(IReadOnlyList<ExpansionEntry> rows, List<Problem> problems)
    {
        var read = new List<ExpansionAsTyped>();
        for (var i = 0; i < rows.Count; i++)
        {
            var field = $"/readings/expansions/{i}";
            var (volume, pressure) = (Volume(rows[i].Volume, $"{field}/volume", problems), Pressure(rows[i].Pressure, $"{field}/pressure", problems));
            if (volume is not null && pressure is not null)
                read.Add(new ExpansionAsTyped(volume, pressure));
            else if (volume is not null && string.IsNullOrWhiteSpace(rows[i].Pressure))
                problems.Add(new Problem($"{field}/pressure", "Type the pressure at this volume."));
            else if (pressure is not null && string.IsNullOrWhiteSpace(rows[i].Volume))
                problems.Add(new Problem($"{field}/volume", "Type the chamber's volume at this pressure."));
        }

        return read;
    }

    private static TypedReading? Volume(string? typed, string field, List<Problem> problems)
    {
        if (string.IsNullOrWhiteSpace(typed))
            return null;
        if (QuantityText.TryReadVolume(typed, VolumeUnit.Millilitre, out var volume, out var problem))
            return Reading.Of(typed, volume);
        problems.Add(new Problem(field, problem!));
        return null;
    }

    private static int? Whole(string? typed, decimal low, string field, List<Problem> problems)
    {
        if (Number(typed, low, MostRuns, field, problems) is not { } read)
            return null;
        if (read.Value == decimal.Truncate(read.Value))
            return (int)read.Value;
        problems.Add(new Problem(field, "A whole number belongs here, for example 3."));
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
