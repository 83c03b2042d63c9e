using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Samples;

/// <summary>The rule "the last sealed container is kept": it is the retained portion, not offered for testing before its date.</summary>
/// <remarks>40 CFR 1090.1345. A sample that came in one container has no retained portion to keep.</remarks>
public static class RetainedPortion
{
    public const string Rule = "retained-portion-is-kept";

    /// <summary>The container that is kept, or null where there is only one or none is sealed any more.</summary>
    public static Container? Of(Sample sample) =>
        sample.Containers.Count < 2 ? null : Sealed(sample).MaxBy(c => c.Number);

    // Testing is complete once no test waits: from that day the portion is kept for the days that are set.
    internal static async Task DateAsync(LabContext context, AssignedTest changed, CancellationToken cancel)
    {
        if (changed.State == TestState.Waiting || await context.Containers.CountAsync(c => c.SampleId == changed.SampleId, cancel) < 2)
            return;
        var sample = await context.Samples.Include(s => s.Containers).ThenInclude(c => c.Openings).Include(s => s.Tests).AsSplitQuery()
            .FirstAsync(s => s.Id == changed.SampleId, cancel);
        if (sample.Tests.Any(t => t.State == TestState.Waiting) || Of(sample) is not { } portion)
            return;
        var settings = await SettingsInForce.LoadAsync(context, cancel);
        var until = LaboratoryTime.Of(settings).Day(context.Clock.GetUtcNow()).AddDays(settings.RetainDays);
        if (portion.RetainUntil is null || portion.RetainUntil < until)
            portion.RetainUntil = until;
    }

    private static List<Container> Sealed(Sample sample) =>
        [.. sample.Containers.Where(c => c.Openings.Count == 0 && c.DisposedAt is null && !c.Leaking)];

    /// <summary>The refusal where the container is the one that is kept.</summary>
    public static Problem? Check(Sample sample, Container container, DateOnly today) =>
        sample.Containers.Count > 1 && Sealed(sample) is [var last] && last.Id == container.Id && !(container.RetainUntil <= today)
            ? new Problem(
                "/containerNumber",
                $"Container {container.Number} is the last sealed one: it is the retained portion"
                + (container.RetainUntil is { } until ? $" until {until:yyyy-MM-dd}." : " until testing is complete.")
                + " Ask for a new sample.",
                Rule)
            : null;
}
