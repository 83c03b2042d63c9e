namespace LabVolatility.Core.Limits;

/// <summary>Words for what an assessment says.</summary>
public static class Outcomes
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<Outcome> All { get; } = Enum.GetValues<Outcome>();

    /// <summary>The word that the interface and the records use.</summary>
    public static string Text(this Outcome value) => value switch
    {
        Outcome.Conforms => "conforms",
        Outcome.DoesNotConform => "does-not-conform",
        Outcome.NotDecided => "not-decided",
        Outcome.Incomplete => "incomplete",
        Outcome.NoLimit => "no-limit",
        _ => throw new ArgumentOutOfRangeException(nameof(value), value, "No such outcome."),
    };

    /// <summary>Reads a word exactly as <see cref="Text"/> writes it; false for anything else.</summary>
    public static bool TryParse(string? text, out Outcome value)
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
