namespace LabVolatility.Core.Methods;

/// <summary>What the methods on air-saturated bottle samples have in common.</summary>
/// <remarks>
/// Source: ASTM D5191-22 and its twin ASTM D5482 (0 to 1 °C and one minute published for the twin; the rest from
/// memory); containers ASTM D5842 (published); cautions own words, after API RP 2003, NFPA 45, 29 CFR 1910.106.
/// </remarks>
internal static class BottleMethod
{
    public const decimal LowestFillPercent = 70m;
    public const decimal HighestFillPercent = 80m;
    public const decimal LowestChilledCelsius = 0m;
    public const decimal HighestChilledCelsius = 1m;

    public static IReadOnlyList<SampleKind> Kinds { get; } =
    [
        SampleKind.Gasoline, SampleKind.EthanolBlend, SampleKind.Solvent,
        SampleKind.AviationTurbine, SampleKind.PureCompound,
    ];

    public static IReadOnlyList<ContainerKind> Containers { get; } =
        [ContainerKind.GlassBottle, ContainerKind.MetalCan, ContainerKind.PlasticBottle];

    // F-23 and F-24 are acknowledged; all others take a typed value or are only shown.
    public static IReadOnlyList<Caution> Cautions { get; } =
    [
        new("F-02", "WARNING", "An overfull bottle can burst as it warms. Type the fill level; take 70 to 80 % only, kept cool and upright.", CautionGate.Hard),
        new("F-10", "WARNING", "A warm sample sprays and loses light ends. Chill to 0 to 1 °C, measure, type it; open slowly in the hood.", CautionGate.Hard),
        new("F-14", "CAUTION", "Each opening lets vapour out. Work in the hood, wear goggles, keep every ignition source away.", CautionGate.Show),
        new("F-11", "NOTICE", "From opening to injection at most one minute. If it took longer, take a new container.", CautionGate.Show),
        new("F-23", "WARNING", "Static can ignite vapour. Bond container and instrument to ground before the first connection; take the bond off last.", CautionGate.Acknowledge),
        new("F-24", "WARNING", "Vapour creeps along the bench. No flame, hot plate, sparking motor or unrated device near the open sample.", CautionGate.Acknowledge),
    ];

    public static IReadOnlyList<HandlingStep> Handling(string source) =>
    [
        new("first-test", "Take a container that no other test has opened; one container serves one vapour pressure.", source, FactStatus.FromMemory),
        new("chill", "Chill the container with its contents, and the syringe, to 0 to 1 °C. Type the temperature.", source, FactStatus.FromMemory),
        new("fill", "Look at the fill level: 70 to 80 %. Under 70 % reject; over 80 % pour off, and put nothing back.", source, FactStatus.FromMemory),
        new("air", "Saturate with air: open, close, shake hard, back to the bath for at least 2 minutes; three times in all.", source, FactStatus.FromMemory),
        new("haze", "Look through the sample at 0 to 1 °C: note haze; two liquids mean a new sample.", source, FactStatus.FromMemory),
        new("inject", "Open, draw and inject within one minute.", source, FactStatus.FromMemory),
    ];
}
