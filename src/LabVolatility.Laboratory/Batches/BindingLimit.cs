using LabVolatility.Core.Limits;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Which limit of a batch binds: the one that a person looks at first.</summary>
public static class BindingLimit
{
    /// <summary>The limit with the gravest outcome, among equals with the smallest margin; null where no limit has a value.</summary>
    public static LimitEvidence? Of(Evidence evidence) => evidence.Limits
        .Where(l => l.Value is not null && (l.Required || l.Outcome != Outcome.Incomplete))
        .OrderBy(l => Gravity(l.Outcome)).ThenBy(l => l.Margin ?? decimal.MaxValue).ThenBy(l => l.Key, StringComparer.Ordinal)
        .FirstOrDefault();

    private static int Gravity(Outcome outcome) => outcome switch
    {
        Outcome.DoesNotConform => 0,
        Outcome.NotDecided => 1,
        Outcome.Incomplete => 2,
        _ => 3,
    };
}
