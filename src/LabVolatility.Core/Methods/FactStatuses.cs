namespace LabVolatility.Core.Methods;

/// <summary>Words for how well a figure is known.</summary>
/// <remarks>Source: none; words of our own interface.</remarks>
public static class FactStatuses
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<FactStatus> All { get; } = Enum.GetValues<FactStatus>();

    /// <summary>The word that the interface and the records use.</summary>
    public static string Text(this FactStatus value) => value switch
    {
        FactStatus.Published => "published",
        FactStatus.FromMemory => "from-memory",
        FactStatus.CommonPractice => "common-practice",
        FactStatus.Laboratory => "laboratory",
        _ => throw new ArgumentOutOfRangeException(nameof(value), value, "No such status."),
    };

    /// <summary>Reads a word exactly as <see cref="Text"/> writes it; false for anything else.</summary>
    public static bool TryParse(string? text, out FactStatus value)
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
