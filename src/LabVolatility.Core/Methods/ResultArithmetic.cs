using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>Works one quantity out and writes down how.</summary>
internal static class ResultArithmetic
{
    /// <summary>The reading itself as a reported quantity.</summary>
    public static ReportedResult Read(TestMethod method, AbsolutePressure total, PressureUnit reportUnit, string suffix)
    {
        List<ArithmeticStep> steps = [Reading(method, method.TotalSymbol, total)];
        var value = Convert(steps, total.Value, total.Unit, reportUnit);
        return Finish(method.TotalSymbol, value, reportUnit, suffix, new("", method.Citation, method.Scope.Status), steps);
    }

    /// <summary>The gas part, and the vapour pressure that is left; none where there is no gas part, no vapour pressure below zero.</summary>
    public static IEnumerable<ReportedResult> FreeOfGas(
        TestMethod method, Readings readings, PressureUnit workUnit, PressureUnit reportUnit, string suffix)
    {
        if (GasPart.In(method, readings, workUnit) is not { } gas)
            yield break;
        List<ArithmeticStep> gasSteps = [.. gas.Steps];
        yield return Finish(
            GasPart.Symbol, Convert(gasSteps, gas.Value, workUnit, reportUnit), reportUnit, suffix, new(gas.Equation, gas.Source, gas.Status), gasSteps);
        List<ArithmeticStep> steps = [];
        if (X(steps, method, readings, gas, workUnit) is not (>= 0m and var vapor))
            yield break;
        var equation = $"{Correlation.VaporPressure} = {method.TotalSymbol} − {GasPart.Symbol}";
        yield return Finish(
            Correlation.VaporPressure, Convert(steps, vapor, workUnit, reportUnit), reportUnit, suffix,
            new(equation, $"{method.Citation}, calculation", gas.Status), steps);
    }

    /// <summary>The correlated quantity, worked in the form's unit; null below zero, or where a reading is missing.</summary>
    public static ReportedResult? Correlate(
        TestMethod method, Correlation correlation, PrintedForm form, Readings readings, PressureUnit reportUnit, string suffix)
    {
        List<ArithmeticStep> steps = [];
        var gas = method.TakesGasOff ? GasPart.In(method, readings, form.Unit) : null;
        if (method.TakesGasOff && gas is null)
            return null;
        if (X(steps, method, readings, correlation.TakesVaporPressure ? gas : null, form.Unit) is not { } x)
            return null;
        if (!correlation.TakesVaporPressure && gas is not null)
            steps.AddRange(gas.Steps);
        var y = form.At(x, gas?.Value ?? 0m);
        if (y < 0)
            return null;
        steps.Add(new(
            "Correlation", form.Write(PlainOrRead(x, readings.TotalPressure!.Value, form.Unit), Rounding.Shown(gas?.Value ?? 0m)),
            Rounding.Trim(y), form.Unit.Symbol(), form.Source));
        var value = Convert(steps, y, form.Unit, reportUnit);
        return Finish(
            correlation.Quantity, value, reportUnit, suffix, new(correlation.Equation(form), form.Source, form.Status), steps)
            with { Correlation = correlation.Name, CorrelationVersion = correlation.Version };
    }

    public static decimal Convert(List<ArithmeticStep> steps, decimal value, PressureUnit from, PressureUnit to)
    {
        if (from == to)
            return value;
        var converted = PressureUnits.Convert(value, from, to);
        steps.Add(new(
            "Unit", $"{Rounding.Shown(value)} {from.Symbol()} in {to.Symbol()}", converted, to.Symbol(), "exact definitions, NIST SP 811 (2008)"));
        return converted;
    }

    // The total pressure in a unit, less the gas part where one is given.
    private static decimal? X(List<ArithmeticStep> steps, TestMethod method, Readings readings, GasPart? gas, PressureUnit unit)
    {
        if (readings.TotalPressure is not { } total)
            return null;
        steps.Add(Reading(method, method.TotalSymbol, total));
        var x = Convert(steps, total.Value, total.Unit, unit);
        if (gas is null)
            return x;
        steps.AddRange(gas.Steps);
        var vapor = x - gas.Value;
        steps.Add(new(
            "Vapour pressure", $"{PlainOrRead(x, total, unit)} − {Rounding.Shown(gas.Value)}", Rounding.Trim(vapor), unit.Symbol(), $"{method.Citation}, calculation"));
        return vapor;
    }

    private static ArithmeticStep Reading(TestMethod method, string symbol, AbsolutePressure read) =>
        new("Reading", $"{symbol} as read", read.Value, read.Unit.Symbol(), method.Citation);

    private static ReportedResult Finish(
        string quantity, decimal value, PressureUnit unit, string suffix, (string Equation, string Source, FactStatus Status) from, List<ArithmeticStep> steps)
    {
        var places = PressureResolution.Places(unit);
        var reported = Rounding.Text(value, places);
        steps.Add(new(
            "Rounding", $"{Rounding.Shown(value)} to {Rounding.Words(places)}, half to even",
            Rounding.ToPlaces(value, places), unit.Symbol(), "ASTM E29-13, rounding method"));
        return new ReportedResult(quantity, Rounding.Trim(value), reported, unit, suffix, "", from.Equation, from.Source, from.Status, steps);
    }

    // A reading is shown as it was typed, with its zeros; a number worked out or converted with six decimals.
    private static string PlainOrRead(decimal x, AbsolutePressure total, PressureUnit unit) =>
        total.Unit == unit && total.Value == x
            ? total.Value.ToString(System.Globalization.CultureInfo.InvariantCulture)
            : Rounding.Shown(x);
}
