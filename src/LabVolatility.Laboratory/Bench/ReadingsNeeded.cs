using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Bench;

/// <summary>What a method can't do without.</summary>
internal static class ReadingsNeeded
{
    private const int Expansions = 3;

    public static IEnumerable<Problem> Check(TestMethod? method, ReadingsAsTyped readings)
    {
        if (readings.TotalPressure is null)
            yield return new Problem("/readings/totalPressure", "Enter the total pressure as the instrument shows it.");
        if (readings.Temperature is null)
            yield return new Problem("/readings/temperature", "Enter the measuring temperature.");
        if (method is not { TakesGasOff: true })
            yield break;
        if (readings.GasPressure is not null && readings.Expansions.Count > 0)
            yield return new Problem("/readings/gasPressure", "Enter the gas pressure or the expansions, not both.");
        else if (readings.GasPressure is null && readings.Expansions.Count == 0)
            yield return new Problem("/readings/gasPressure", "Enter the gas pressure as the instrument gives it, or three expansions.");
        if (readings.Expansions.Count is not (0 or Expansions))
            yield return new Problem("/readings/expansions", $"Three expansions are needed; {readings.Expansions.Count} are given.");
        if (readings.Expansions.Count > 0 && readings.IntroductionTemperature is null)
            yield return new Problem("/readings/introductionTemperature", "Enter the temperature of the expansions.");
    }
}
