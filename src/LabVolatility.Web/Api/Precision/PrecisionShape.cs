namespace LabVolatility.Web.Api.Precision;

internal static class PrecisionShape
{
    public static ObjectShape Shape { get; } = new("PrecisionRequest",
        new Member("method", KnownMethods.Shape, true),
        new Member("sample", SampleShape.Shape),
        new Member("values", new ListShape(QuantityShape.Pressure) { About = "In the order they were made, unrounded." }, true),
        new Member("repeatability", QuantityShape.PressureDifference with { About = "Stands in for the laboratory's." }),
        new Member("reproducibility", QuantityShape.PressureDifference with { About = "Stands in for the laboratory's." }));
}
