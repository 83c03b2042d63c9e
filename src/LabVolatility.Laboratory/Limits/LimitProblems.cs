using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Limits;

/// <summary>What can be wrong in a limit as entered.</summary>
internal static class LimitProblems
{
    public static IReadOnlyList<Problem> Of(LaboratoryLimit limit, IReadOnlyList<Area> areas)
    {
        var problems = new List<Problem>();
        if (string.IsNullOrWhiteSpace(limit.Key))
            problems.Add(new Problem("/key", "Give the limit a name of its own."));
        else if (PublishedAreas.All.SelectMany(a => a.Limits).Any(l => l.Limit.Key == limit.Key.Trim()))
            problems.Add(new Problem("/key", $"{limit.Key} ships with the program: take another name."));
        if (areas.All(a => a.Code != limit.AreaCode))
            problems.Add(new Problem("/area", $"There is no area \"{limit.AreaCode}\"."));
        if (limit.Minimum is null && limit.Maximum is null)
            problems.Add(new Problem("/maximum", "A limit has a minimum, a maximum, or both."));
        if (limit.Minimum > limit.Maximum)
            problems.Add(new Problem("/maximum", "The maximum is below the minimum."));
        if (limit.Digits is < 0 or > 3)
            problems.Add(new Problem("/digits", "A limit has 0 to 3 decimals."));
        else if (HasMoreDigits(limit.Minimum, limit.Digits) || HasMoreDigits(limit.Maximum, limit.Digits))
            problems.Add(new Problem("/digits", "The limit is written with more decimals than that."));
        if (!PressureUnits.TryParse(limit.Unit, out _))
            problems.Add(new Problem("/unit", $"\"{limit.Unit}\" is no pressure unit."));
        if (Correlations.All.All(c => c.Quantity != limit.Quantity))
            problems.Add(new Problem("/quantity", $"\"{limit.Quantity}\" is not measured here; limits are for {string.Join(" or ", Correlations.All.Select(c => c.Quantity).Distinct())}."));
        else if (limit.Correlation is null && limit.Quantity == "RVP")
            problems.Add(new Problem("/correlation", "An RVP belongs to the equation it is worked out by: EPA or CARB."));
        if (limit.Correlation is not null && Correlations.Named(limit.Correlation)?.Quantity != limit.Quantity)
            problems.Add(new Problem("/correlation", $"{limit.Correlation} does not give {limit.Quantity}."));
        foreach (var method in limit.Methods.Where(m => !TestMethods.TryFind(m, out _)))
            problems.Add(new Problem("/methods", $"\"{method}\" is not a test method of this laboratory."));
        if (string.IsNullOrWhiteSpace(limit.Source))
            problems.Add(new Problem("/source", "Say where it stands: contract, clause, date."));
        if (limit.EffectiveUntil < limit.EffectiveFrom)
            problems.Add(new Problem("/effectiveUntil", "It ends before it begins."));
        return problems;
    }

    private static bool HasMoreDigits(decimal? edge, int digits) => edge is { } e && Rounding.ToPlaces(e, digits) != e;
}
