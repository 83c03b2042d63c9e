using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>What a method by triple expansion remarks or rejects about the gas part and the instrument's settings.</summary>
internal static class GasFindings
{
    // Air at 101.3 kPa dissolved with the largest plausible solubility, 0.6, and let out into four volumes at 37.8 °C.
    private const decimal MostGasKilopascals = 15m;

    public static IReadOnlyList<Finding> All(TestMethod method, Readings readings) => method.TakesGasOff
        ? [.. Gas(method, readings), .. Ratio(method, readings), .. Settings(method.Expansion, readings)]
        : [];

    /// <summary>Why no correlated quantity is given, where the method could give one.</summary>
    public static IEnumerable<Finding> NoCorrelation(TestMethod method, SampleCondition sample, Correlation? correlation, PrintedForm? form)
    {
        if (!method.TakesGasOff || form is not null)
            yield break;
        if (!Measurement.IsFuel(sample.Kind))
            yield return Warn(FindingCodes.NoCorrelation, $"The DVPE is for gasoline and its blends with ethanol; for {sample.Kind.Text()} {method.Designation} reports VP4.");
        else if (correlation is null)
            yield return Warn(FindingCodes.NoCorrelation, $"No correlation from VP4 to DVPE is set for {method.Designation}: it isn't public. The laboratory enters it from its own copy, and a second person approves it; until then DVPE isn't reported.");
        else
            yield return Warn(FindingCodes.NoCorrelation, $"{correlation.Version} is printed for {string.Join(" and ", method.PrecisionContainerVolumes)} containers, not for {sample.ContainerVolume?.ToString() ?? "one of unknown size"}: only VP4 is reported.");
    }

    private static IEnumerable<Finding> Gas(TestMethod method, Readings readings)
    {
        if (readings.GasPressure is null && readings.Run is null)
        {
            yield return Block(FindingCodes.ReadingMissing, $"{method.Designation} needs the gas part of the pressure: as the instrument gives it, or three expansions with their temperature and the test temperature.");
            yield break;
        }

        GasCorrection? solved = null;
        if (readings.GasPressure is null && !TripleExpansion.TrySolve(readings.Run!, PressureUnit.Kilopascal, out solved, out var problem))
        {
            yield return Block(FindingCodes.GasPressureImplausible, problem);
            yield break;
        }

        if (solved?.Implausible is { } doubt)
            yield return Warn(FindingCodes.GasPressureImplausible, doubt);
        var gas = readings.GasPressure?.In(PressureUnit.Kilopascal) ?? solved!.GasAtTest;
        if (gas > readings.TotalPressure!.Value.In(PressureUnit.Kilopascal))
            yield return Block(FindingCodes.GasPressureImplausible, "The gas part is above the total pressure, so no vapour pressure is left. Check both readings and their units.");
        else if (gas > MostGasKilopascals)
            yield return Warn(FindingCodes.GasPressureImplausible, $"The gas part is {Rounding.Text(gas, 1)} kPa; a sample that stood at the air leaves about 3 to 8 kPa, hardly more than 15. Look for a leak, or a gas that isn't air.");
    }

    // The chamber's last volume and the specimen's say what the ratio was.
    private static IEnumerable<Finding> Ratio(TestMethod method, Readings readings)
    {
        if (readings.GasPressure is not null || readings.LiquidVolume is not { Value: > 0m } liquid || readings.Expansions.Count == 0)
            yield break;
        var millilitres = liquid.In(VolumeUnit.Millilitre);
        var ratio = (readings.Expansions[^1].Volume.In(VolumeUnit.Millilitre) - millilitres) / millilitres;
        if (ratio > 0m && MethodFindings.IsOff(ratio, method.NominalRatio, method.RatioTolerance))
            yield return MethodFindings.RatioOff(method, ratio);
    }

    private static IEnumerable<Finding> Settings(ExpansionSettings settings, Readings readings)
    {
        if (readings.RinseCycles < settings.RinseCycles)
            yield return Warn(FindingCodes.SettingsOff, $"The chamber was rinsed {Times(readings.RinseCycles.Value)}; {settings.RinseCycles} times is common practice, or the sample before is measured too. Set the instrument, and take a new container.");
        if (readings.IntroductionTemperature is { } introduction && IsOutside(settings, introduction.In(TemperatureUnit.Celsius)))
            yield return Block(FindingCodes.SettingsOff, $"The specimen was taken in at {introduction}; the method takes {settings.LowestIntroduction} to {settings.HighestIntroduction}. Bring the chamber to {settings.UsualIntroduction} and take a new container.");
        if (readings.ConsecutiveDeterminations > 1)
            yield return Warn(FindingCodes.SettingsOff, $"The instrument ran the test {Times(readings.ConsecutiveDeterminations.Value)} on this container, which serves one test only: enter the readings of the first run.");
    }

    private static bool IsOutside(ExpansionSettings settings, decimal celsius) =>
        celsius < settings.LowestIntroduction.In(TemperatureUnit.Celsius) || celsius > settings.HighestIntroduction.In(TemperatureUnit.Celsius);

    private static string Times(int count) => count == 1 ? "once" : $"{count} times";

    private static Finding Block(string code, string message) => new(code, FindingSeverity.Blocking, message);

    private static Finding Warn(string code, string message) => new(code, FindingSeverity.Warning, message);
}
