namespace LabVolatility.Core.Limits;

/// <summary>Words for where a limit must be met.</summary>
public static class PointsOfCompliance
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<PointOfCompliance> All { get; } = Enum.GetValues<PointOfCompliance>();

    /// <summary>The word that the interface and the records use.</summary>
    public static string Text(this PointOfCompliance value) => value switch
    {
        PointOfCompliance.Terminal => "terminal",
        PointOfCompliance.Retail => "retail",
        _ => throw new ArgumentOutOfRangeException(nameof(value), value, "No such point of compliance."),
    };

    /// <summary>Reads a word exactly as <see cref="Text"/> writes it; false for anything else.</summary>
    public static bool TryParse(string? text, out PointOfCompliance value)
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
