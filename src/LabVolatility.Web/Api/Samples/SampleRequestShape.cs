using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Web.Api.Samples;

internal static class SampleRequestShape
{
    public static IReadOnlyList<string> Levels { get; } = [.. Enum.GetValues<SampleLevel>().Select(Text)];

    private static readonly ObjectShape Container = new("NewContainer",
        new Member("container", SampleShape.Container, true),
        new Member("containerVolume", QuantityShape.Volume, true),
        new Member("fillPercent", new NumberShape(Above: 0, High: 100)),
        new Member("temperature", QuantityShape.Temperature with { About = "At receipt." }),
        new Member("seal", new TextShape(100)));

    public static ObjectShape Shape { get; } = new("NewSample",
        new Member("grade", new TextShape(40) { About = "A grade of the laboratory." }, true),
        new Member("batch", new TextShape(40)),
        new Member("samplePoint", new TextShape(40)),
        new Member("level", new WordShape(Levels) { About = "Default spot." }),
        new Member("sampledAt", new InstantShape(), true),
        new Member("sampledBy", new TextShape(100), true),
        new Member("receivedAt", new InstantShape { About = "null: announced, not here yet." }),
        new Member("containers", new ListShape(Container, Most: 99), true),
        new Member("note", new TextShape(2000)));

    public static SampleRequest Read(Given body) => new()
    {
        Grade = body["grade"].Words,
        Batch = body["batch"].Words,
        SamplePoint = body["samplePoint"].Words,
        Level = Enum.GetValues<SampleLevel>().Where(l => Text(l) == body["level"].Text).DefaultIfEmpty(SampleLevel.Spot).First(),
        SampledAt = body["sampledAt"].Instant,
        SampledBy = body["sampledBy"].Words,
        ReceivedAt = body["receivedAt"].Instant,
        Containers = [.. body["containers"].Items.Select(ReadContainer)],
        Note = body["note"].Words,
    };

    public static string Text(SampleLevel level) => level.ToString().ToLowerInvariant();

    private static ContainerRequest ReadContainer(Given container)
    {
        _ = Core.Methods.ContainerKinds.TryParse(container["container"].Text, out var kind);
        return new ContainerRequest(
            kind, container["containerVolume"].Volume!.Value.In(Core.Quantities.VolumeUnit.Millilitre), container["fillPercent"].Number,
            container["temperature"].Temperature?.ToString(), container["seal"].Words);
    }
}
