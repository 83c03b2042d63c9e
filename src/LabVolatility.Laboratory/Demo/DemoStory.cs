namespace LabVolatility.Laboratory.Demo;

/// <summary>All that happened in the demo laboratory, in the order of time.</summary>
internal static class DemoStory
{
    public static IReadOnlyList<DemoStep> Of(DemoCast cast, DemoDays days)
    {
        var steps = new DemoSteps(cast);
        var testers = new DemoTesters(cast, days);
        var ordinary = new DemoBatchDays(days, steps);
        var incidents = new DemoIncidents(days, steps, ordinary);
        IEnumerable<DemoStep> all =
        [
            .. Beginning(new DemoReference(cast, days.Day(-1)), days), testers.Added(), .. testers.Trouble(),
            .. Enumerable.Range(0, DemoDays.Count).SelectMany(day => testers.Morning(day).Concat(incidents.On(day) ?? ordinary.Of(day))),
            .. new DemoToday(days, steps, testers).Steps(),
        ];

        // Ordered stably: what happens at one moment keeps the order in which it is told.
        return [.. all.OrderBy(step => step.At)];
    }

    private static IEnumerable<DemoStep> Beginning(DemoReference reference, DemoDays days) =>
    [
        new(days.At(-1, 9), reference.GradesAndTanks),
        new(days.At(-1, 10), reference.Area),
        new(days.At(-1, 11), reference.Limits),
        new(days.At(-1, 12), reference.Precision),
    ];
}
