using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Bench;

namespace LabVolatility.Laboratory.Samples;

/// <summary>A container as it is shown: what it is, and why it can't be used where it can't.</summary>
/// <param name="Container">The container with its openings.</param>
/// <param name="Retained">It is the portion that is kept.</param>
/// <param name="WhyNot">Why it isn't offered for a test; null when it is.</param>
public sealed record ContainerSheet(Container Container, bool Retained, string? WhyNot)
{
    /// <summary>Never opened, sound and still here.</summary>
    public static IEnumerable<Container> SealedOf(Sample sample) =>
        sample.Containers.Where(c => c.Openings.Count == 0 && c.DisposedAt is null && !c.Leaking);

    /// <summary>All containers of a sample, held against the rules for a method, or for any method where it is null.</summary>
    public static IReadOnlyList<ContainerSheet> Of(Sample sample, TestMethod? method, DateOnly today)
    {
        var kept = RetainedPortion.Of(sample)?.Id;
        return [.. sample.Containers.OrderBy(c => c.Number).Select(c => new ContainerSheet(c, c.Id == kept, Why(sample, c, method, today)))];
    }

    /// <summary>How many may be opened for a test before only the one that is kept is left.</summary>
    public static int Offered(IReadOnlyList<ContainerSheet> containers)
    {
        var usable = containers.Where(c => c.WhyNot is null).ToList();
        return usable.Count(c => !c.Retained || usable.Count == 1);
    }

    private static string? Why(Sample sample, Container container, TestMethod? method, DateOnly today) =>
        container.DisposedAt is not null ? $"Container {container.Number} has been disposed of."
        : container.Leaking ? $"Container {container.Number} leaks: it is not fit for vapour pressure."
        : method is not null && OneTestAContainer.Check(method, container) is { } opened ? opened.Message
        : RetainedPortion.Check(sample, container, today)?.Message;
}
