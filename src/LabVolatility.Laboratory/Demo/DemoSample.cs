using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Demo;

/// <summary>A sample of the demo by a name of its own; the laboratory gives it its number.</summary>
/// <param name="Name">Unlike any other: "26-1031 running".</param>
/// <param name="Product">Its grade.</param>
/// <param name="Batch">Number of its batch; null: it belongs to none.</param>
/// <param name="Tank">Null: from a line.</param>
/// <param name="Point">The sample point.</param>
/// <param name="Level">Where in the tank it is drawn.</param>
/// <param name="Containers">How many bottles of 1 L.</param>
internal sealed record DemoSample(
    string Name, DemoProduct Product, string? Batch, string? Tank, string Point, SampleLevel Level, int Containers)
{
    public string Command => $"register sample {Name}";

    public string Determination(int container) => $"determination {Name} container {container}";
}
