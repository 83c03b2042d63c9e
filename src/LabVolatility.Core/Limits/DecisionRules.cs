namespace LabVolatility.Core.Limits;

/// <summary>Words for the decision rules.</summary>
public static class DecisionRules
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<DecisionRule> All { get; } = Enum.GetValues<DecisionRule>();

    /// <summary>The word that the interface and the records use.</summary>
    public static string Text(this DecisionRule value) => value switch
    {
        DecisionRule.Simple => "simple",
        DecisionRule.Guarded => "guarded",
        _ => throw new ArgumentOutOfRangeException(nameof(value), value, "No such decision rule."),
    };

    /// <summary>Reads a word exactly as <see cref="Text"/> writes it; false for anything else.</summary>
    public static bool TryParse(string? text, out DecisionRule value)
    {
        foreach (var candidate in All)
        {
            if (candidate.Text() == text)
            {
                value = candidate;
                return true;
            }
        }

        value = default;
        return false;
    }
}
