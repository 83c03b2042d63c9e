using LabVolatility.Core.Methods;

namespace LabVolatility.Web.Api;

/// <summary>The raw values of one determination.</summary>
internal static class ReadingsShape
{
    private const int MostExpansions = 3;

    private static readonly ObjectShape One = new("Expansion",
        new Member("volume", QuantityShape.Volume with { About = "The chamber's, liquid and vapour." }, true), new Member("pressure", QuantityShape.Pressure, true));

    /// <summary>Three are needed; fewer can't be computed.</summary>
    public static ListShape Expansions { get; } = new(One, Most: MostExpansions);

    public static ObjectShape Shape { get; } = new("Readings",
        new Member("totalPressure", QuantityShape.Pressure),
        new Member("gasPressure", QuantityShape.Pressure with { About = "Of the dissolved gas at the test temperature, as the instrument gives it; never rescaled." }),
        new Member("gaugePressure", QuantityShape.GaugePressure),
        new Member("temperature", QuantityShape.Temperature),
        new Member("vaporLiquidRatio", new NumberShape(Above: 0, High: 1000)),
        new Member("introductionTemperature", QuantityShape.Temperature),
        new Member("expansions", Expansions with { About = "Three of one specimen, in place of the gas pressure." }),
        new Member("liquidVolume", QuantityShape.Volume with { About = "The specimen's, with expansions; without it the gas solubility isn't looked at." }),
        new Member("barometricPressure", QuantityShape.Pressure),
        new Member("composition", new PercentagesShape { About = "Component to liquid volume percent; for methods that this build does not have." }),
        new Member("temperatureAtRatio", QuantityShape.Temperature))
    {
        About = "Members that a method does not need may be absent.",
    };

    /// <summary>The expansions as sent.</summary>
    public static IReadOnlyList<Expansion> ReadExpansions(Given given) =>
        [.. given.Items.Select(e => new Expansion(e["volume"].Volume!.Value, e["pressure"].Pressure!.Value))];
}
