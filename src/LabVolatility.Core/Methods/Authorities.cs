namespace LabVolatility.Core.Methods;

/// <summary>Words for whose correlation is meant.</summary>
/// <remarks>Source: none; words of our own interface.</remarks>
public static class Authorities
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<Authority> All { get; } = Enum.GetValues<Authority>();

    /// <summary>The word that the interface and the records use.</summary>
    public static string Text(this Authority value) => value switch
    {
        Authority.Astm => "ASTM",
        Authority.En => "EN",
        Authority.Epa => "EPA",
        Authority.Carb => "CARB",
        _ => throw new ArgumentOutOfRangeException(nameof(value), value, "No such authority."),
    };

    /// <summary>Reads a word exactly as <see cref="Text"/> writes it; false for anything else.</summary>
    public static bool TryParse(string? text, out Authority value)
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
