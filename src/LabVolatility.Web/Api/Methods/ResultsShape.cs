using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Web.Api.Methods;

internal static class ResultsShape
{
    public static ObjectShape Shape { get; } = new("ResultsRequest",
        new Member("method", KnownMethods.Shape, true),
        new Member("procedure", new TextShape(20) { About = "For methods that have procedures." }),
        new Member("readings", ReadingsShape.Shape, true),
        new Member("sample", SampleShape.Shape),
        new Member("authority", new WordShape([.. Authorities.All.Select(a => a.Text())]) { About = "Whose correlation; default: the method's own." }),
        new Member("reportUnit", new WordShape([.. PressureUnits.All.Select(u => u.Symbol())]) { About = "Default kPa." }),
        new Member("reidEquivalent", new FlagShape { About = "For crude oil methods only." }));
}
