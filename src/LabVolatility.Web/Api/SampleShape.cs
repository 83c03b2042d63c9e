using LabVolatility.Core.Methods;

namespace LabVolatility.Web.Api;

/// <summary>The sample as a program describes it.</summary>
internal static class SampleShape
{
    public static WordShape Container { get; } = new([.. ContainerKinds.All.Select(c => c.Text())]);

    public static ObjectShape Shape { get; } = new("Sample",
        new Member("kind", new WordShape([.. SampleKinds.All.Select(k => k.Text())])),
        new Member("container", Container),
        new Member("containerVolume", QuantityShape.Volume),
        new Member("fillPercent", new NumberShape(Low: 0, High: 100) { About = "% of the container's volume." }),
        new Member("airSaturated", new FlagShape { About = "null: nobody stated it." }),
        new Member("hazy", new FlagShape { About = "Hazy at 0 to 1 °C; default false." }),
        new Member("phases", new NumberShape(Low: 1, High: 9, Whole: true) { About = "Liquids seen; default 1." }))
    {
        About = "What isn't stated is remarked in the findings.",
    };

    /// <summary>The condition, and findings on what nobody stated and had to be supposed.</summary>
    public static SampleRead Read(Given sample, TestMethod method)
    {
        var supposed = new List<Finding>();
        if (!SampleKinds.TryParse(sample["kind"].Text, out var kind))
        {
            kind = method.Kinds[0];
            supposed.Add(Suppose($"Nobody stated what the sample is; {kind.Text()} was supposed. State its kind."));
        }

        if (!ContainerKinds.TryParse(sample["container"].Text, out var container))
        {
            container = method.Containers[0];
            supposed.Add(Suppose($"Nobody stated the container; a {container.Text()} was supposed. State it."));
        }

        var condition = new SampleCondition(
            kind, container, sample["containerVolume"].Volume, sample["fillPercent"].Number, sample["airSaturated"].Flag,
            sample["hazy"].Flag ?? false, sample["phases"].Whole ?? 1);
        return new SampleRead(condition, sample["container"].IsThere ? container : null, supposed);
    }

    private static Finding Suppose(string message) => new(FindingCodes.Container, FindingSeverity.Warning, message);
}
