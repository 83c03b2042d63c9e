using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Published;

/// <summary>Works out what the checks of the triple expansion ask for.</summary>
internal static class CheckedExpansions
{
    // chamber volumes 1 to 3 and specimen in mL, pressures 1 to 3 in kPa, taking in and test in °C
    public static decimal? Gas(string[] arguments) => Solve(arguments)?.GasAtIntroduction;

    public static decimal? GasAtTest(string[] arguments) => Solve(arguments)?.GasAtTest;

    public static decimal? Vapor(string[] arguments) => Solve(arguments)?.VaporAtIntroduction;

    public static decimal? Solubility(string[] arguments) => Solve(arguments)?.Solubility;

    public static decimal? Quotient(string[] arguments) =>
        Solve(arguments)?.Arithmetic.FirstOrDefault(step => step.Label == TripleExpansion.QuotientLabel)?.Value;

    // vapour pressure, unit, container in mL
    public static decimal? Predicted(string[] arguments)
    {
        _ = TestMethods.TryFind(TestMethods.AstmD6378, out var method);
        _ = PressureUnits.TryParse(arguments[1], out var unit);
        var readings = new Readings
        {
            TotalPressure = AbsolutePressure.From(PublishedChecks.Number(arguments[0]), unit),
            GasPressure = AbsolutePressure.From(0m, unit),
        };
        var container = Volume.From(PublishedChecks.Number(arguments[2]), VolumeUnit.Millilitre);
        return Measurement.ResultInUnit(method!, readings, container, Correlations.Find(TestMethods.AstmD6378, Authority.Astm)!, unit)?.Value;
    }

    private static GasCorrection? Solve(string[] arguments)
    {
        decimal[] n = [.. arguments.Select(PublishedChecks.Number)];
        var run = new ExpansionRun(
            [.. Enumerable.Range(0, 3).Select(i => new Expansion(Volume.From(n[i], VolumeUnit.Millilitre), AbsolutePressure.From(n[i + 4], PressureUnit.Kilopascal)))],
            Volume.From(n[3], VolumeUnit.Millilitre),
            Temperature.From(n[7], TemperatureUnit.Celsius), Temperature.From(n[8], TemperatureUnit.Celsius));
        return TripleExpansion.TrySolve(run, PressureUnit.Kilopascal, out var correction, out _) ? correction : null;
    }
}
