using LabVolatility.Core.Limits;

namespace LabVolatility.Core.Assessment;

/// <summary>One outcome for several limits.</summary>
public static class OverallOutcome
{
    /// <summary>
    /// The first that occurs among the required limits of: does not conform, incomplete, not decided, conforms;
    /// no limit where none is required. Limits that aren't required never change it.
    /// </summary>
    /// <param name="limits">Each limit's outcome, and whether the limit is required.</param>
    /// <remarks>Source: common practice.</remarks>
    public static Outcome Of(IEnumerable<(Outcome Outcome, bool Required)> limits)
    {
        var found = limits.Where(limit => limit.Required).Select(limit => limit.Outcome).ToHashSet();
        Outcome[] worstFirst = [Outcome.DoesNotConform, Outcome.Incomplete, Outcome.NotDecided, Outcome.Conforms];
        return worstFirst.Where(found.Contains).DefaultIfEmpty(Outcome.NoLimit).First();
    }
}
