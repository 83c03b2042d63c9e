using LabVolatility.Core.Assessment;
using LabVolatility.Core.Limits;

namespace LabVolatility.Web.Api.Assessment;

/// <summary>A value against a bare limit, as a program asks it.</summary>
internal static class BareLimit
{
    /// <summary>Null where the request breaks rules.</summary>
    public static LimitInput? Read(Given body, Mistakes mistakes)
    {
        var edge = body["maximum"].IsThere ? body["maximum"] : body["minimum"];
        if (!edge.IsThere)
            body["maximum"].Refuse("A limit has a maximum, a minimum, or both.");
        _ = DecisionRules.TryParse(body["rule"].Text, out var rule);
        _ = Comparisons.TryParse(body["comparison"].Text, out var comparison);
        if (mistakes.Any)
            return null;
        var unit = LimitNumberShape.UnitOf(edge)!;
        var input = new LimitInput
        {
            Unit = unit,
            Digits = body["digits"].Whole ?? ExactNumber.PlacesWritten(edge.Digits ?? edge["value"].Digits ?? ""),
            Value = In(body["value"], unit),
            Maximum = In(body["maximum"], unit),
            Minimum = In(body["minimum"], unit),
            Reproducibility = In(body["reproducibility"], unit),
            Repeatability = In(body["repeatability"], unit),
            Count = body["count"].Whole ?? 1,
            Rule = rule,
            Comparison = comparison,
            Confidence = body["confidence"].Number ?? 0.95m,
        };
        if (input.Minimum > input.Maximum)
            body["minimum"].Refuse("The minimum is above the maximum.");
        return mistakes.Any ? null : input;
    }

    private static decimal? In(Given given, string unit)
    {
        if (!given.IsThere)
            return null;
        var number = LimitNumberShape.In(given, unit);
        if (number is null)
            given.Refuse(unit.Length == 0 ? "The limit has no unit, so this can't have one." : $"It can't be held against a limit in {unit}.");
        return number;
    }
}
