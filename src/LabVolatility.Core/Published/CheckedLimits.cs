using System.Globalization;
using LabVolatility.Core.Limits;

namespace LabVolatility.Core.Published;

/// <summary>Works out what the checks of limits, seasons and allowances ask for.</summary>
internal static class CheckedLimits
{
    // area, quantity, edge, point, date, state, ethanol
    public static decimal? Edge(string[] arguments)
    {
        _ = ProductStates.TryParse(arguments[5], out var state);
        var limit = Pick(arguments[0], arguments[3], arguments[4], state, PublishedChecks.NumberOrNone(arguments[6]))
            .Limits.FirstOrDefault(picked => picked.Limit.Quantity == arguments[1]);
        return arguments[2] == "maximum" ? limit?.EffectiveMaximum : limit?.EffectiveMinimum;
    }

    // area, point, date
    public static decimal InForce(string[] arguments) =>
        Pick(arguments[0], arguments[1], arguments[2], ProductState.Finished, null).Limits.Count;

    // area, ethanol
    public static decimal? Allowance(string[] arguments) =>
        Pick(arguments[0], "terminal", "2026-05-10", ProductState.Finished, PublishedChecks.Number(arguments[1]))
            .Limits.FirstOrDefault(picked => picked.Limit.Allowance is not NoAllowance)?.AllowanceGiven;

    private static LimitPick Pick(string area, string point, string date, ProductState state, decimal? ethanol)
    {
        _ = PointsOfCompliance.TryParse(point, out var at);
        var day = DateOnly.ParseExact(date, "yyyy-MM-dd", CultureInfo.InvariantCulture);
        return LimitPicker.Pick(PublishedAreas.All, new ProductQuery("gasoline", state, area, at, day, ethanol));
    }
}
