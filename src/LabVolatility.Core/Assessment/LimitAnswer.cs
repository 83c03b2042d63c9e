using LabVolatility.Core.Limits;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Assessment;

/// <summary>Whether a result may answer a limit: quantity, correlation and method must be the limit's.</summary>
public static class LimitAnswer
{
    /// <summary>Why a result can't answer a limit, in words; null where it can.</summary>
    /// <param name="limit">The limit.</param>
    /// <param name="result">The result.</param>
    /// <remarks>Source: common practice; a correlation is part of the quantity.</remarks>
    public static string? Refusal(Limit limit, MeasuredResult result)
    {
        if (result.Quantity != limit.Quantity)
            return $"{result.Quantity} isn't {limit.Quantity}.";
        var asked = limit.Correlation ?? result.Method;
        var given = CorrelationOf(result);
        if (given != asked)
            return $"The limit asks for {limit.Quantity} by {asked}; this one is by {given}.";
        if (limit.Methods.Count > 0 && !limit.Methods.Contains(result.Method))
            return $"{result.Method} may not answer this limit; {string.Join(", ", limit.Methods)} may.";
        return IsLike(limit.Unit, result.Unit) ? null : $"{result.Unit} can't be held against {limit.Unit}.";
    }

    /// <summary>The correlation of a result: as named, else EPA's for RVP, else the method's own.</summary>
    internal static string CorrelationOf(MeasuredResult result) => CorrelationOf(result.Quantity, result.Method, result.Correlation);

    /// <summary>The correlation by which a method gave a quantity: as named, else EPA's for RVP, else the method's own.</summary>
    /// <param name="quantity">"DVPE", "RVP".</param>
    /// <param name="method">The method's designation.</param>
    /// <param name="correlation">The name or the authority; null or empty: not named.</param>
    /// <remarks>Source: common practice; a correlation is part of the quantity.</remarks>
    public static string CorrelationOf(string quantity, string method, string? correlation) => correlation switch
    {
        null or "" => quantity == "RVP" ? "EPA" : method,
        "ASTM" or "EN" => method,
        { } named => named,
    };

    /// <summary>A number of the result's unit in the limit's unit.</summary>
    internal static decimal InUnitOf(Limit limit, MeasuredResult result, decimal number) =>
        PressureUnits.TryParse(result.Unit, out var from) && PressureUnits.TryParse(limit.Unit, out var to)
            ? PressureUnits.Convert(number, from, to)
            : number;

    private static bool IsLike(string limitUnit, string resultUnit) =>
        limitUnit == resultUnit
        || (PressureUnits.TryParse(limitUnit, out _) && PressureUnits.TryParse(resultUnit, out _));
}
