using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Web.Setup;

/// <summary>What is done on an occasion, as typed; the hold that ends every branch is not typed.</summary>
public sealed class RetestRuleEntry
{
    public RetestOccasion Occasion { get; init; }

    public List<RetestStepEntry> Steps { get; } = [];

    /// <summary>The tree as typed: every occasion once.</summary>
    public static List<RetestRuleEntry> Of(RetestTree tree) => [.. Enum.GetValues<RetestOccasion>().Select(o => Of(tree.For(o)))];

    public RetestRule Read() => new(Occasion, [.. Steps.Select(s => s.Read()), new RetestStep(RetestKind.HoldAndCall)]);

    private static RetestRuleEntry Of(RetestRule rule)
    {
        var entry = new RetestRuleEntry { Occasion = rule.Occasion };
        entry.Steps.AddRange(rule.Steps.Where(s => s.Kind != RetestKind.HoldAndCall).Select(RetestStepEntry.Of));
        return entry;
    }
}
