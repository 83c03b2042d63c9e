using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>What a method remarks or rejects about a determination.</summary>
internal static class MethodFindings
{
    public static Finding TotalMissing(TestMethod method) =>
        Block(FindingCodes.ReadingMissing, $"{method.Designation} needs the total pressure; read it and enter it.");

    public static IReadOnlyList<Finding> All(TestMethod method, Readings readings, SampleCondition sample, AbsolutePressure? scoped) =>
    [
        .. Scope(method.ScopeOf(sample.Kind), scoped),
        .. Chamber(method, readings),
        .. GasFindings.All(method, readings),
        .. Run(method, readings),
        .. SampleFindings.All(method, sample),
    ];

    /// <summary>Where the equation has no answer although all it takes was read.</summary>
    public static IEnumerable<Finding> BelowZero(Correlation correlation, PrintedForm form, TestMethod method, Readings readings)
    {
        if (method.TakesGasOff && Measurement.VaporPressureInUnit(method, readings, form.Unit) is null)
            yield break;
        yield return Block(
            FindingCodes.OutsideScope,
            $"{correlation.Equation(form)} falls below zero at {readings.TotalPressure}. The method can't answer; check the reading and its unit.");
    }

    public static Finding RatioOff(TestMethod method, decimal ratio) => Block(
        FindingCodes.RatioOff,
        $"The vapour-liquid ratio was {Rounding.Shown(ratio)}; the method demands {Rounding.Plain(method.NominalRatio - method.RatioTolerance)} to {Rounding.Plain(method.NominalRatio + method.RatioTolerance)}, since pressure falls as the ratio grows. Check the volumes and test a new container.");

    public static bool IsOff(decimal value, decimal nominal, decimal tolerance) => Math.Abs(value - nominal) > tolerance;

    private static IEnumerable<Finding> Scope(MethodScope scope, AbsolutePressure? scoped)
    {
        if (scoped is { } pressure && !scope.Covers(pressure))
        {
            yield return Warn(
                FindingCodes.OutsideScope,
                $"{scope.Quantity} is outside {scope.Range(pressure.Unit)}, which {scope.Source} covers: there is no precision here. Say so with the result, or take a method that covers it.");
        }
    }

    private static IEnumerable<Finding> Chamber(TestMethod method, Readings readings)
    {
        if (readings.Temperature is { } temperature
            && IsOff(temperature.In(TemperatureUnit.Celsius), method.NominalTemperature.In(TemperatureUnit.Celsius), method.TemperatureTolerance))
        {
            yield return Block(
                FindingCodes.TemperatureOff,
                $"The chamber was at {temperature}; the method is set to {method.NominalTemperature} ± {Rounding.Plain(method.TemperatureTolerance)} °C, and the correlation holds there only. Bring it to temperature and test a new container.");
        }

        if (readings.VaporLiquidRatio is { } ratio && IsOff(ratio, method.NominalRatio, method.RatioTolerance))
            yield return RatioOff(method, ratio);
    }

    private static IEnumerable<Finding> Run(TestMethod method, Readings readings)
    {
        if (!method.TakesGasOff && readings.ChilledTo is { } chilled)
        {
            var celsius = chilled.In(TemperatureUnit.Celsius);
            if (celsius > BottleMethod.HighestChilledCelsius)
                yield return Block(FindingCodes.NotChilled, $"The sample was opened at {chilled}; the method asks for 0 to 1 °C, or light ends are lost. Chill a new container.");
            else if (celsius < BottleMethod.LowestChilledCelsius)
                yield return Warn(FindingCodes.NotChilled, $"The sample was opened at {chilled}; the method asks for 0 to 1 °C. Look for ice or haze, and set the bath.");
        }

        if (readings.AtEquilibrium == false)
            yield return Block(FindingCodes.NotAtEquilibrium, $"The pressure had not come to rest, so it isn't the vapour pressure. Wait until three readings {(method.TakesGasOff ? "20 s" : "a minute")} apart agree within 0.1 kPa.");
        if (readings.FirstTestOnContainer == false)
            yield return Block(FindingCodes.FirstTest, "Another test had opened this container, which loses light ends. Take a sealed container.");
    }

    private static Finding Block(string code, string message) => new(code, FindingSeverity.Blocking, message);

    private static Finding Warn(string code, string message) => new(code, FindingSeverity.Warning, message);
}
