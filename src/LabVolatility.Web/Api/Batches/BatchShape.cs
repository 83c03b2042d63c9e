using LabVolatility.Core.Limits;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Batches;

namespace LabVolatility.Web.Api.Batches;

internal static class BatchShape
{
    private static readonly ObjectShape Destination = new("Destination",
        new Member("area", new TextShape(40), true),
        new Member("pointOfCompliance", new WordShape([.. PointsOfCompliance.All.Select(p => p.Text())]), true));

    public static ObjectShape Shape { get; } = new("NewBatch",
        new Member("number", new TextShape(40), true),
        new Member("grade", new TextShape(40) { About = "A grade of the laboratory." }, true),
        new Member("state", new WordShape([.. ProductStates.All.Select(s => s.Text())]) { About = "Default: as the grade says." }),
        new Member("tank", new TextShape(40)),
        new Member("volume", QuantityShape.Volume),
        new Member("ethanolPercent", new NumberShape(Low: 0, High: 100) { About = "Measured, % (V/V); null: not measured." }),
        new Member("ethanolMethod", new TextShape(40) { About = "How ethanol was measured." }),
        new Member("destinations", new ListShape(Destination, Most: 50), true),
        new Member("from", new DateShape { About = "First local day of use." }, true),
        new Member("until", new DateShape { About = "Last local day of use." }, true));

    public static BatchRequest Read(Given body) => new()
    {
        Number = body["number"].Words,
        Grade = body["grade"].Words,
        State = ProductStates.TryParse(body["state"].Text, out var state) ? state : null,
        Tank = body["tank"].Words,
        CubicMetres = body["volume"].Volume?.In(VolumeUnit.CubicMetre),
        EthanolPercent = body["ethanolPercent"].Number,
        EthanolMethod = body["ethanolMethod"].Words ?? (body["ethanolPercent"].IsThere ? "measured, as sent by a program" : null),
        Destinations = [.. body["destinations"].Items.Select(ReadDestination)],
        From = body["from"].Date,
        Until = body["until"].Date,
    };

    private static Destination ReadDestination(Given given)
    {
        _ = PointsOfCompliance.TryParse(given["pointOfCompliance"].Text, out var point);
        return new Destination(given["area"].Words!, point);
    }
}
