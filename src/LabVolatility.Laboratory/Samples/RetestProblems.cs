using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Samples;

/// <summary>What can be wrong in a grade's tree as entered.</summary>
internal static class RetestProblems
{
    private const int MostTimes = 9;
    private const int MostContainers = 20;

    public static IEnumerable<Problem> Of(RetestTree tree)
    {
        foreach (var (place, rule) in tree.Rules.Index())
        {
            if (tree.Rules.Take(place).Any(r => r.Occasion == rule.Occasion))
                yield return new Problem($"/tree/{place}", $"There is a rule already for: {RetestWords.Of(rule.Occasion)}.");
            if (rule.Steps is not [.., { Kind: RetestKind.HoldAndCall, Times: 1 }] || rule.Steps.Count(s => s.Kind == RetestKind.HoldAndCall) > 1)
                yield return new Problem($"/tree/{place}", "Every branch ends, and only ends, with: hold and call the quality manager.");
            foreach (var (index, step) in rule.Steps.Index())
            {
                if (step.Times is < 1 or > MostTimes)
                    yield return new Problem($"/tree/{place}/{index}/times", $"A step is taken 1 to {MostTimes} times at most.");
                if (step.Kind == RetestKind.MoreContainers && step.Containers is < 1 or > MostContainers)
                    yield return new Problem($"/tree/{place}/{index}/containers", $"Test 1 to {MostContainers} containers.");
                if (step.Kind == RetestKind.MoreContainers && rule.Occasion == RetestOccasion.SampleVoid)
                    yield return new Problem($"/tree/{place}/{index}", "More containers of a void sample don't help: draw it again.");
            }
        }
    }
}
