namespace LabVolatility.Laboratory.Demo;

/// <summary>All that happened in the demo laboratory, in the order of time.</summary>
internal static class DemoStory
{
    public static IReadOnlyList<DemoStep> Of(DemoCast cast, DemoDays days)
    {
        var steps = new DemoSteps(cast);
        var testers = new DemoTesters(cast, days);
        var ordinary = new DemoBatchDays(days, steps);
        var rundown = new DemoRundown(days, steps);
        var incidents = new DemoIncidents(days, steps, ordinary);
        IEnumerable<DemoStep> all =
        [
            .. Beginning(new DemoReference(cast, days.Day(-1)), days), testers.Added(),
            .. Enumerable.Range(0, days.Count).SelectMany(Day),
            .. new DemoToday(days, steps, testers).Steps(), .. new DemoVisitors(cast, days, steps).Steps(),
        ];

        // Ordered stably: what happens at one moment keeps the order in which it is told.
        return [.. all.OrderBy(step => step.At)];

        IEnumerable<DemoStep> Day(int day) =>
            [.. testers.Morning(day), .. testers.Trouble(day), .. rundown.Of(day), .. incidents.On(day) ?? ordinary.Of(day)];
    }

    private static IEnumerable<DemoStep> Beginning(DemoReference reference, DemoDays days) =>
    [
        new(days.At(-1, 9), reference.GradesAndTanks),
        new(days.At(-1, 10), reference.Area),
        new(days.At(-1, 11), reference.Limits),
        new(days.At(-1, 12), reference.Precision),
        new(days.At(-1, 12, 30), reference.Correlation),
    ];
}
