namespace LabVolatility.Core.Methods;

/// <summary>Words for what a sample is.</summary>
/// <remarks>Source: none; words of our own interface.</remarks>
public static class SampleKinds
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<SampleKind> All { get; } = Enum.GetValues<SampleKind>();

    /// <summary>The word that the interface and the records use.</summary>
    public static string Text(this SampleKind value) => value switch
    {
        SampleKind.Gasoline => "gasoline",
        SampleKind.EthanolBlend => "ethanol-blend",
        SampleKind.CrudeLive => "crude-live",
        SampleKind.CrudeDead => "crude-dead",
        SampleKind.Lpg => "lpg",
        SampleKind.Solvent => "solvent",
        SampleKind.AviationTurbine => "aviation-turbine",
        SampleKind.PureCompound => "pure-compound",
        _ => throw new ArgumentOutOfRangeException(nameof(value), value, "No such sample kind."),
    };

    /// <summary>Reads a word exactly as <see cref="Text"/> writes it; false for anything else.</summary>
    public static bool TryParse(string? text, out SampleKind value)
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
