using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>The gas part of a total pressure, at the test temperature: as the instrument gave it, or from three expansions.</summary>
internal sealed record GasPart(decimal Value, string Equation, string Source, FactStatus Status, IReadOnlyList<ArithmeticStep> Steps)
{
    public const string Symbol = "Pgas";
    private const string FromExpansions = "Pgas = (TP1 − TP3)/(Q − 1) · (273.2 + t)/(273.2 + ti)";

    /// <summary>Worked in a unit; null where nothing was read, or the expansions have no physical solution.</summary>
    public static GasPart? In(TestMethod method, Readings readings, PressureUnit unit)
    {
        if (readings.GasPressure is { } gas)
        {
            List<ArithmeticStep> steps = [new("Reading", $"{Symbol} as read, at the test temperature", gas.Value, gas.Unit.Symbol(), method.Citation)];
            return new(ResultArithmetic.Convert(steps, gas.Value, gas.Unit, unit), "", method.Citation, method.Scope.Status, steps);
        }

        return readings.Run is { } run && TripleExpansion.TrySolve(run, unit, out var found, out _)
            ? new(found.GasAtTest, FromExpansions, $"{method.Citation}, three expansions; solved here", FactStatus.FromMemory, found.Arithmetic)
            : null;
    }
}
