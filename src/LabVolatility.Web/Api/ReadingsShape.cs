namespace LabVolatility.Web.Api;

/// <summary>The raw values of one determination.</summary>
internal static class ReadingsShape
{
    private static readonly ObjectShape Expansion = new("Expansion",
        new Member("volume", QuantityShape.Volume, true), new Member("pressure", QuantityShape.Pressure, true));

    public static ObjectShape Shape { get; } = new("Readings",
        new Member("totalPressure", QuantityShape.Pressure),
        new Member("gasPressure", QuantityShape.Pressure),
        new Member("gaugePressure", QuantityShape.GaugePressure),
        new Member("temperature", QuantityShape.Temperature),
        new Member("vaporLiquidRatio", new NumberShape(Above: 0, High: 1000)),
        new Member("introductionTemperature", QuantityShape.Temperature),
        new Member("expansions", new ListShape(Expansion)),
        new Member("barometricPressure", QuantityShape.Pressure),
        new Member("composition", new PercentagesShape { About = "Component to liquid volume percent; for methods that this build does not have." }),
        new Member("temperatureAtRatio", QuantityShape.Temperature))
    {
        About = "Members that a method does not need may be absent.",
    };
}
