using static System.FormattableString;

namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>Builds the statement of conformity from data: which results, which limit, which rule.</summary>
/// <remarks>ISO/IEC 17025:2017, 7.8.6.2.</remarks>
public static class ConformityStatement
{
    /// <summary>A sentence for each limit and outcome; before several of them their count.</summary>
    public static IReadOnlyList<string> For(IReadOnlyList<LimitLine> limits)
    {
        if (limits.Count == 0)
            return ["No limit was applied; this certificate states results only."];
        var sentences = limits
            .GroupBy(l => (l.Quantity, l.Edge, l.Effective, l.Unit, l.Source, l.Standing, l.AppliesTo, l.Rule, l.Method,
                l.Correlation, l.Outcome))
            .Select(group => Sentence(group.First(), [.. group.SelectMany(l => l.SampleNumbers).Distinct()]));
        return limits.Count == 1 ? [.. sentences] : [Count(limits), .. sentences];
    }

    /// <summary>The outcome as the certificate prints it.</summary>
    public static string Words(LimitOutcome outcome) => outcome switch
    {
        LimitOutcome.Conforms => "conforms",
        LimitOutcome.DoesNotConform => "does not conform",
        LimitOutcome.NotDecided => "not decided",
        LimitOutcome.Incomplete => "incomplete",
        _ => throw new ArgumentOutOfRangeException(nameof(outcome), outcome, "An outcome without words."),
    };

    private static string Count(IReadOnlyList<LimitLine> limits)
    {
        var parts = Enum.GetValues<LimitOutcome>()
            .Select(outcome => (Outcome: outcome, Times: limits.Count(l => l.Outcome == outcome)))
            .Where(part => part.Times > 0)
            .Select(part => Invariant($"{Words(part.Outcome)}: {part.Times}"));
        return Invariant($"Comparisons with limits: {limits.Count} ({string.Join(", ", parts)}).");
    }

    private static string Sentence(LimitLine limit, IReadOnlyList<string> samples)
    {
        var edge = limit.Edge == LimitEdge.Maximum ? "maximum" : "minimum";
        var bound = $"the {edge} of {limit.Effective} {limit.Unit} of {limit.Source} ({limit.Standing} limit"
            + (limit.AppliesTo is null ? ")" : $"; {limit.AppliesTo})");
        var correlation = limit.Correlation is null ? string.Empty : $" (correlation {limit.Correlation})";
        var method = limit.Method is null ? string.Empty : $" by {limit.Method}{correlation}";
        var result = $"{limit.Quantity}{Of(samples)}{method}";
        var said = limit.Outcome switch
        {
            LimitOutcome.Conforms => $"{result} conforms to {bound}",
            LimitOutcome.DoesNotConform => $"{result} does not conform to {bound}",
            LimitOutcome.NotDecided => $"Whether {result} conforms to {bound} is not decided",
            LimitOutcome.Incomplete => $"{limit.Quantity}: no result that may answer {bound}; incomplete",
            _ => throw new ArgumentOutOfRangeException(nameof(limit), limit.Outcome, "An outcome without words."),
        };
        return $"{said}. Decision rule: {limit.Rule}.";
    }

    private static string Of(IReadOnlyList<string> samples) => samples.Count switch
    {
        0 => string.Empty,
        1 => " of sample " + samples[0],
        _ => " of samples " + string.Join(", ", samples),
    };
}
