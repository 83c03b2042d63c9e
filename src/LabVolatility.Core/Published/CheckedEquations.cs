using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Published;

/// <summary>Works out what the checks of equations, units and rounding ask for.</summary>
internal static class CheckedEquations
{
    public static decimal? Correlated(string correlation, decimal total, string unit)
    {
        var found = Correlations.Named(correlation)
            ?? throw new InvalidDataException($"\"{correlation}\" is no correlation.");
        _ = TestMethods.TryFind(found.Method, out var method);
        var read = UnitOf(unit);
        return Measurement.ResultInUnit(method!, new Readings { TotalPressure = AbsolutePressure.From(total, read) }, null, found, read)?.Value;
    }

    public static decimal? Reported(string correlation, decimal total, string unit, int places) =>
        Correlated(correlation, total, unit) is { } value ? Rounding.ToPlaces(value, places) : null;

    public static decimal Converted(decimal value, string from, string to) => PressureUnits.Convert(value, UnitOf(from), UnitOf(to));

    public static decimal Rounded(decimal value, int places) => Rounding.ToPlaces(value, places);

    private static PressureUnit UnitOf(string symbol) =>
        PressureUnits.TryParse(symbol, out var unit) ? unit : throw new InvalidDataException($"\"{symbol}\" is no pressure unit.");
}
