namespace LabVolatility.Browser.Tests.Harness;

/// <summary>A screen that people really stand at; sizes in CSS pixels.</summary>
public sealed record Screen(string Name, int Width, int Height, bool Touch)
{
    /// <summary>The laboratory's desk computer.</summary>
    public static Screen Desk { get; } = new("desk", 1366, 768, false);

    /// <summary>A ten-inch tablet held upright.</summary>
    public static Screen Tablet { get; } = new("tablet", 810, 1080, true);

    /// <summary>A telephone beside a bed.</summary>
    public static Screen Phone { get; } = new("phone", 390, 844, true);

    /// <summary>A smaller one.</summary>
    public static Screen SmallPhone { get; } = new("small phone", 360, 740, true);

    /// <summary>Every screen on which every page has to work.</summary>
    public static IReadOnlyList<Screen> All { get; } = [Desk, Tablet];

    public static Screen Named(string name) => ((Screen[])[.. All, Phone, SmallPhone]).Single(screen => screen.Name == name);

    public override string ToString() => Name;
}
