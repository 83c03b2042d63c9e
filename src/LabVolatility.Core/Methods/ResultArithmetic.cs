using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>Works one quantity out and writes down how.</summary>
internal static class ResultArithmetic
{
    /// <summary>The reading itself as a reported quantity.</summary>
    public static ReportedResult Read(TestMethod method, AbsolutePressure total, PressureUnit reportUnit, string suffix)
    {
        List<ArithmeticStep> steps = [new("Reading", $"{method.TotalSymbol} as read", total.Value, total.Unit.Symbol(), method.Citation)];
        var value = Convert(steps, total.Value, total.Unit, reportUnit);
        return Finish(method.TotalSymbol, value, reportUnit, suffix, "", "", method.Citation, method.Scope.Status, steps);
    }

    /// <summary>The correlated quantity, worked in a unit the equation is printed in; null below zero.</summary>
    public static ReportedResult? Correlate(
        Correlation correlation, AbsolutePressure total, PressureUnit printedUnit, PressureUnit reportUnit, string suffix)
    {
        List<ArithmeticStep> steps =
            [new("Reading", $"{correlation.Reading} as read", total.Value, total.Unit.Symbol(), correlation.Method)];
        var x = Convert(steps, total.Value, total.Unit, printedUnit);
        var form = correlation.FormFor(printedUnit);
        var y = form.At(x);
        if (y < 0)
            return null;
        steps.Add(new(
            "Correlation",
            $"{Rounding.Plain(form.Slope)} · {PlainOrRead(x, total, printedUnit)} − {Rounding.Plain(form.Subtrahend)}",
            Rounding.Trim(y), printedUnit.Symbol(), form.Source));
        var value = Convert(steps, y, printedUnit, reportUnit);
        return Finish(
            correlation.Quantity, value, reportUnit, suffix,
            correlation.Name, correlation.Equation(printedUnit), form.Source, form.Status, steps);
    }

    private static ReportedResult Finish(
        string quantity, decimal value, PressureUnit unit, string suffix, string correlation, string equation,
        string source, FactStatus status, List<ArithmeticStep> steps)
    {
        var places = PressureResolution.Places(unit);
        var reported = Rounding.Text(value, places);
        steps.Add(new(
            "Rounding", $"{Rounding.Shown(value)} to {Rounding.Words(places)}, half to even",
            Rounding.ToPlaces(value, places), unit.Symbol(), "ASTM E29-13, rounding method"));
        return new ReportedResult(
            quantity, Rounding.Trim(value), reported, unit, suffix, correlation, equation, source, status, steps);
    }

    private static decimal Convert(List<ArithmeticStep> steps, decimal value, PressureUnit from, PressureUnit to)
    {
        if (from == to)
            return value;
        var converted = PressureUnits.Convert(value, from, to);
        steps.Add(new(
            "Unit", $"{Rounding.Shown(value)} {from.Symbol()} in {to.Symbol()}", converted, to.Symbol(), "exact definitions, NIST SP 811 (2008)"));
        return converted;
    }

    // A reading is shown as it was typed, with its zeros; a converted number with six decimals.
    private static string PlainOrRead(decimal x, AbsolutePressure total, PressureUnit unit) =>
        total.Unit == unit
            ? total.Value.ToString(System.Globalization.CultureInfo.InvariantCulture)
            : Rounding.Shown(x);
}
