namespace LabVolatility.Core.Precision;

/// <summary>Words for what to do next.</summary>
public static class NextSteps
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<NextStep> All { get; } = Enum.GetValues<NextStep>();

    /// <summary>The word that the interface and the records use.</summary>
    public static string Text(this NextStep value) => value switch
    {
        NextStep.Report => "report",
        NextStep.More => "more",
        NextStep.Investigate => "investigate",
        _ => throw new ArgumentOutOfRangeException(nameof(value), value, "No such next step."),
    };

    /// <summary>Reads a word exactly as <see cref="Text"/> writes it; false for anything else.</summary>
    public static bool TryParse(string? text, out NextStep value)
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
