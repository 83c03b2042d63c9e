namespace LabVolatility.Core.Methods;

/// <summary>Words for what a sample is kept in.</summary>
/// <remarks>Source: none; words of our own interface.</remarks>
public static class ContainerKinds
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<ContainerKind> All { get; } = Enum.GetValues<ContainerKind>();

    /// <summary>The word that the interface and the records use.</summary>
    public static string Text(this ContainerKind value) => value switch
    {
        ContainerKind.GlassBottle => "glass-bottle",
        ContainerKind.MetalCan => "metal-can",
        ContainerKind.PlasticBottle => "plastic-bottle",
        ContainerKind.FloatingPistonCylinder => "floating-piston-cylinder",
        ContainerKind.ManualPistonCylinder => "manual-piston-cylinder",
        ContainerKind.PressureCylinder => "pressure-cylinder",
        _ => throw new ArgumentOutOfRangeException(nameof(value), value, "No such container."),
    };

    /// <summary>Reads a word exactly as <see cref="Text"/> writes it; false for anything else.</summary>
    public static bool TryParse(string? text, out ContainerKind value)
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
