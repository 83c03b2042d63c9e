using System.Diagnostics.CodeAnalysis;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>Three expansions of one specimen: vapour pressure, gas part and gas solubility.</summary>
/// <remarks>
/// The vapour pressure VP stays the same from expansion to expansion; the gas is ideal and its amount fixed, part of it
/// dissolved after Henry's law: TPn = VP + K/(Vn − b) with b = VL · (1 − L). Source: ASTM D6378-22 for the six readings,
/// the temperature step and the subtraction (published); the solution of the three equations is derived, since its
/// printed form isn't public.
/// </remarks>
public static class TripleExpansion
{
    internal const string QuotientLabel = "Quotient Q";
    private const int Needed = 3;
    private const decimal ResolutionKilopascals = 0.1m;
    private const decimal SmallestChamber = 0.001m;
    private const decimal LargestChamber = 1_000_000m;

    /// <summary>0 °C on the scale of the temperature step, as printed: 273.2, not 273.15.</summary>
    private const decimal IceKelvins = 273.2m;

    private const string Derived = "solved from TPn = VP + K/(Vn − b)";
    private const string TemperatureStep = "ASTM D6378-22, temperature step of the gas part";

    /// <summary>Works the gas part out; false where the readings admit no physical solution.</summary>
    /// <param name="run">The expansions and their temperatures.</param>
    /// <param name="unit">The unit to work and to answer in.</param>
    /// <param name="correction">What came out.</param>
    /// <param name="problem">Why nothing did, and what to do.</param>
    /// <remarks>
    /// Three pressures within 0.1 kPa of one another, the resolution of the reading, leave no gas part.
    /// Source: see the class.
    /// </remarks>
    public static bool TrySolve(
        ExpansionRun run, PressureUnit unit, [NotNullWhen(true)] out GasCorrection? correction, [NotNullWhen(false)] out string? problem)
    {
        correction = null;
        problem = ChamberProblem(run);
        if (problem is not null)
            return false;
        decimal[] v = [.. run.Expansions.Select(e => e.Volume.In(VolumeUnit.Millilitre))];
        decimal[] p = [.. run.Expansions.Select(e => e.Pressure.In(unit))];
        var read = Read(run, unit);
        if (AreEqual(run.Expansions))
        {
            correction = new GasCorrection(unit, p[2], 0m, 0m, null, [read, NoGas(unit)]);
            return true;
        }

        problem = PressureProblem(p, v, unit);
        if (problem is not null)
            return false;
        var (gas, q) = (Gas(p, v), Quotient(p, v));
        List<ArithmeticStep> steps =
        [
            read,
            new(QuotientLabel, "(TP1 − TP2)/(TP2 − TP3) · (V3 − V2)/(V2 − V1)", q, "", Derived),
            new("Gas part after the last expansion", $"({Rounding.Shown(p[0])} − {Rounding.Shown(p[2])}) / (Q − 1)", gas, unit.Symbol(), Derived),
        ];
        var solubility = Solubility(run.LiquidVolume, p, v, gas);
        if (solubility is not null)
            steps.Add(new("Gas solubility", "1 − b/VL with b = (Q · V1 − V3)/(Q − 1)", solubility, "", Derived));
        steps.Add(AtTest(run, gas, unit));
        correction = new GasCorrection(unit, p[2] - gas, gas, steps[^1].Value!.Value, solubility, steps);
        return true;
    }

    private static string? ChamberProblem(ExpansionRun run)
    {
        if (run.Expansions.Count != Needed)
            return $"Three expansions are needed; {run.Expansions.Count} are given.";
        decimal[] v = [.. run.Expansions.Select(e => e.Volume.In(VolumeUnit.Millilitre))];
        if (v[0] < SmallestChamber || v[2] > LargestChamber)
            return "A chamber holds 0.001 mL to 1000 L: check the volumes and their units.";
        if (v[0] >= v[1] || v[1] >= v[2])
            return "The chamber has to grow from expansion to expansion: check the volumes and their order.";
        return run.LiquidVolume is { } liquid && (liquid.Value == 0m || liquid.In(VolumeUnit.Millilitre) >= v[0])
            ? "The liquid is more than nothing, and less than the chamber at the first expansion: check the volumes."
            : null;
    }

    private static string? PressureProblem(decimal[] p, decimal[] v, PressureUnit unit)
    {
        var said = $"{Rounding.Shown(p[0])}, {Rounding.Shown(p[1])}, {Rounding.Shown(p[2])} {unit.Symbol()}";
        if (p[0] <= p[1] || p[1] <= p[2])
            return $"The pressure has to fall from expansion to expansion, and it read {said}. Look for a leak, two liquids, or a reading before it stood still; take a new specimen.";
        var (excess, part) = Terms(p, v);
        if (excess <= 0m)
            return $"No gas behaves as {said} say: Q is not above 1, so the pressure falls too little at first. Look for a leak or two liquids; take a new specimen.";
        return (p[0] - p[2]) * part > p[2] * excess
            ? $"The gas part would be above the pressure itself with {said}. Check the volumes, look for a leak; take a new specimen."
            : null;
    }

    // Q − 1 = excess / part, kept apart so that one division is made.
    private static (decimal Excess, decimal Part) Terms(decimal[] p, decimal[] v)
    {
        var part = (p[1] - p[2]) * (v[1] - v[0]);
        return (((p[0] - p[1]) * (v[2] - v[1])) - part, part);
    }

    private static decimal Gas(decimal[] p, decimal[] v)
    {
        var (excess, part) = Terms(p, v);
        return (p[0] - p[2]) * part / excess;
    }

    // Null where it is too large for a decimal: next to no gas.
    private static decimal? Quotient(decimal[] p, decimal[] v)
    {
        const decimal Largest = 1_000_000_000m;
        var (excess, part) = Terms(p, v);
        return part * Largest < excess ? null : 1m + (excess / part);
    }

    private static decimal? Solubility(Volume? liquid, decimal[] p, decimal[] v, decimal gas)
    {
        if (liquid is not { } specimen)
            return null;
        var b = v[0] - (gas * (v[2] - v[0]) / (p[0] - p[2]));
        return 1m - (b / specimen.In(VolumeUnit.Millilitre));
    }

    private static bool AreEqual(IReadOnlyList<Expansion> expansions)
    {
        var kpa = expansions.Select(e => e.Pressure.In(PressureUnit.Kilopascal)).ToList();
        return kpa.Max() - kpa.Min() <= ResolutionKilopascals;
    }

    private static ArithmeticStep AtTest(ExpansionRun run, decimal gas, PressureUnit unit)
    {
        var (from, to) = (run.Introduction.In(TemperatureUnit.Celsius), run.Test.In(TemperatureUnit.Celsius));
        return new(
            "Gas part at the test temperature",
            $"{Rounding.Shown(gas)} · ({IceKelvins} + {Rounding.Shown(to)}) / ({IceKelvins} + {Rounding.Shown(from)})",
            gas * (IceKelvins + to) / (IceKelvins + from), unit.Symbol(), TemperatureStep);
    }

    private static ArithmeticStep Read(ExpansionRun run, PressureUnit unit) => new(
        "Expansions",
        string.Join(", ", run.Expansions.Select((e, i) => $"TP{i + 1} = {e.Pressure} at {e.Volume}")), null, unit.Symbol(), "as read");

    private static ArithmeticStep NoGas(PressureUnit unit) =>
        new("Gas part", "the three pressures agree within 0.1 kPa", 0m, unit.Symbol(), Derived);
}
