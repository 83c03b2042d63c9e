using LabVolatility.Core.Limits;

namespace LabVolatility.Core.Assessment;

/// <summary>One outcome for several limits.</summary>
public static class OverallOutcome
{
    private static readonly Outcome[] WorstFirst = [Outcome.DoesNotConform, Outcome.Incomplete, Outcome.NotDecided, Outcome.Conforms];

    /// <summary>
    /// The first that occurs of: does not conform, incomplete, not decided, conforms; no limit where there is none.
    /// A limit that isn't required counts once it is answered; left unanswered it doesn't change the outcome.
    /// </summary>
    /// <param name="limits">Each limit's outcome, and whether the limit is required.</param>
    /// <remarks>Source: common practice.</remarks>
    public static Outcome Of(IEnumerable<(Outcome Outcome, bool Required)> limits)
    {
        var found = limits.Where(limit => limit.Required || limit.Outcome != Outcome.Incomplete).Select(limit => limit.Outcome).ToHashSet();
        return WorstFirst.Where(found.Contains).DefaultIfEmpty(Outcome.NoLimit).First();
    }

    /// <summary>Where an outcome stands in that order: 0 is the worst.</summary>
    internal static int Gravity(Outcome outcome) => Array.IndexOf(WorstFirst, outcome);
}
