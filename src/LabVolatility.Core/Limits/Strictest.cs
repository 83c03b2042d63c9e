using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Limits;

/// <summary>Takes several limits together: the strictest edge of each side wins.</summary>
public static class Strictest
{
    /// <summary>What the limits leave, one answer for each quantity and correlation.</summary>
    /// <param name="limits">Picked limits, of one or of several areas, points and dates.</param>
    /// <param name="comparison">Under rounding the edges are half a step out, as E29 reads them.</param>
    /// <remarks>
    /// Limits of unlike units are compared by the largest value that would still pass, in kPa.
    /// Source: common practice; ASTM E29-13 for what still passes.
    /// </remarks>
    public static IReadOnlyList<StrictestLimit> Of(
        IReadOnlyList<PickedLimit> limits, Comparison comparison = Comparison.Rounding) =>
    [
        .. limits.GroupBy(picked => (picked.Limit.Quantity, Correlation: CorrelationOf(picked.Limit)))
            .Select(group => Join(group.Key.Quantity, group.Key.Correlation, [.. group], comparison)),
    ];

    // Where a limit names no correlation its referee method's own is meant: unlike methods stay apart.
    private static string CorrelationOf(Limit limit) =>
        limit.Correlation ?? limit.RefereeMethod ?? (limit.Methods.Count > 0 ? limit.Methods[0] : "");

    private static StrictestLimit Join(
        string quantity, string correlation, IReadOnlyList<PickedLimit> limits, Comparison comparison)
    {
        var minimum = limits.Where(l => l.EffectiveMinimum is not null)
            .OrderByDescending(l => PassingEdge.OfMinimum(l, comparison).Value)
            .ThenBy(l => PassingEdge.OfMinimum(l, comparison).IsIncluded).FirstOrDefault();
        var maximum = limits.Where(l => l.EffectiveMaximum is not null)
            .OrderBy(l => PassingEdge.OfMaximum(l, comparison).Value)
            .ThenBy(l => PassingEdge.OfMaximum(l, comparison).IsIncluded).FirstOrDefault();
        var isEmpty = minimum is not null && maximum is not null
            && Excludes(PassingEdge.OfMinimum(minimum, comparison), PassingEdge.OfMaximum(maximum, comparison));
        return new(quantity, correlation, minimum, maximum, isEmpty, Why(quantity, minimum, maximum, isEmpty));
    }

    private static bool Excludes(PassingEdge low, PassingEdge high) =>
        low.Value > high.Value || (low.Value == high.Value && !(low.IsIncluded && high.IsIncluded));

    private static string Why(string quantity, PickedLimit? minimum, PickedLimit? maximum, bool isEmpty)
    {
        var low = minimum is null ? null : $"{Rounding.Text(minimum.EffectiveMinimum!.Value, minimum.Limit.Digits)} {minimum.Limit.Unit} of {minimum.Area}";
        var high = maximum is null ? null : $"{Rounding.Text(maximum.EffectiveMaximum!.Value, maximum.Limit.Digits)} {maximum.Limit.Unit} of {maximum.Area}";
        return isEmpty
            ? $"No {quantity} meets both the minimum of {low} and the maximum of {high}: split the destinations, {minimum!.Area} apart from {maximum!.Area}."
            : (low, high) switch
            {
                (null, null) => $"{quantity} has neither a minimum nor a maximum here.",
                (null, _) => $"The maximum of {high} binds.",
                (_, null) => $"The minimum of {low} binds.",
                _ => $"The minimum of {low} and the maximum of {high} bind.",
            };
    }
}
