using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Limits;

/// <summary>The last value that still passes a limit, in kPa for pressures.</summary>
/// <param name="Value">The edge.</param>
/// <param name="IsIncluded">Whether the edge itself still passes.</param>
internal sealed record PassingEdge(decimal Value, bool IsIncluded)
{
    /// <summary>The largest value that passes a maximum: with rounding, half a step above it.</summary>
    public static PassingEdge OfMaximum(PickedLimit picked, Comparison comparison) =>
        Of(picked.EffectiveMaximum!.Value, picked.Limit, comparison, +1);

    /// <summary>The smallest value that passes a minimum: with rounding, half a step below it.</summary>
    public static PassingEdge OfMinimum(PickedLimit picked, Comparison comparison) =>
        Of(picked.EffectiveMinimum!.Value, picked.Limit, comparison, -1);

    private static PassingEdge Of(decimal limit, Limit rule, Comparison comparison, int side)
    {
        if (comparison == Comparison.Absolute)
            return new(Common(limit, rule), true);
        var edge = limit + (side * 0.5m * Step(rule.Digits));
        return new(Common(edge, rule), Rounding.ToPlaces(edge, rule.Digits) == limit);
    }

    private static decimal Common(decimal value, Limit rule) =>
        PressureUnits.TryParse(rule.Unit, out var unit)
            ? PressureUnits.Convert(value, unit, PressureUnit.Kilopascal)
            : value;

    private static decimal Step(int digits)
    {
        var step = 1m;
        for (var i = 0; i < Math.Abs(digits); i++)
            step = digits > 0 ? step / 10m : step * 10m;
        return step;
    }
}
