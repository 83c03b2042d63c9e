namespace LabVolatility.Core.Limits;

/// <summary>Words for the two comparisons.</summary>
public static class Comparisons
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<Comparison> All { get; } = Enum.GetValues<Comparison>();

    /// <summary>The word that the interface and the records use.</summary>
    public static string Text(this Comparison value) => value switch
    {
        Comparison.Rounding => "rounding",
        Comparison.Absolute => "absolute",
        _ => throw new ArgumentOutOfRangeException(nameof(value), value, "No such comparison."),
    };

    /// <summary>Reads a word exactly as <see cref="Text"/> writes it; false for anything else.</summary>
    public static bool TryParse(string? text, out Comparison value)
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
