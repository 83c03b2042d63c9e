namespace LabVolatility.Core.Limits;

/// <summary>Words for what is to be judged.</summary>
public static class ProductStates
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<ProductState> All { get; } = Enum.GetValues<ProductState>();

    /// <summary>The word that the interface and the records use.</summary>
    public static string Text(this ProductState value) => value switch
    {
        ProductState.Finished => "finished",
        ProductState.Blendstock => "blendstock",
        ProductState.HandBlend => "hand-blend",
        _ => throw new ArgumentOutOfRangeException(nameof(value), value, "No such product state."),
    };

    /// <summary>Reads a word exactly as <see cref="Text"/> writes it; false for anything else.</summary>
    public static bool TryParse(string? text, out ProductState value)
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
