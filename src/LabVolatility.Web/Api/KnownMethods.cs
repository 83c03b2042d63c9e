using LabVolatility.Core.Methods;

namespace LabVolatility.Web.Api;

/// <summary>The test methods that the interface speaks of, and those that this build works out.</summary>
internal static class KnownMethods
{
    /// <summary>All that version 1 of the interface names.</summary>
    public static IReadOnlyList<string> Named { get; } =
    [
        "ASTM D323", "ASTM D4953", "ASTM D5191", "ASTM D5482", "ASTM D6378", "ASTM D6377", "ASTM D6897", "ASTM D1267",
        "ASTM D2598", "ASTM D5188", "EN 13016-1", "EN 13016-2", "EN 13016-3",
    ];

    public static IReadOnlyList<string> Built { get; } = [.. TestMethods.All.Select(m => m.Designation)];

    public static IReadOnlyList<string> NotBuilt { get; } = [.. Named.Except(Built)];

    public static WordShape Shape { get; } = new(Built) { Elsewhere = NotBuilt, About = "Designation without edition." };
}
