namespace LabVolatility.Web.Api.Methods;

internal static class GasCorrectionShape
{
    public static ObjectShape Shape { get; } = new("GasCorrectionRequest",
        new Member("expansions", ReadingsShape.Expansions with { About = "Three of one specimen at constant temperature, the chamber growing." }, true),
        new Member("liquidVolume", QuantityShape.Volume with { About = "The specimen's; without it the solubility can't be told." }),
        new Member("introductionTemperature", QuantityShape.Temperature with { About = "Of the expansions." }, true),
        new Member("testTemperature", QuantityShape.Temperature with { About = "Of the total pressure." }, true),
        new Member("totalPressure", QuantityShape.Pressure with { About = "At the test temperature, the chamber as at the last expansion." }, true));
}
