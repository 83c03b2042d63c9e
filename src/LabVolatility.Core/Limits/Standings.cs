namespace LabVolatility.Core.Limits;

/// <summary>Words for what stands behind a limit.</summary>
public static class Standings
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<Standing> All { get; } = Enum.GetValues<Standing>();

    /// <summary>The word that the interface and the records use.</summary>
    public static string Text(this Standing value) => value switch
    {
        Standing.Legal => "legal",
        Standing.Contract => "contract",
        Standing.Internal => "internal",
        _ => throw new ArgumentOutOfRangeException(nameof(value), value, "No such standing."),
    };

    /// <summary>Reads a word exactly as <see cref="Text"/> writes it; false for anything else.</summary>
    public static bool TryParse(string? text, out Standing value)
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
