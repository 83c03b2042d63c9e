namespace LabVolatility.Laboratory.Demo;

/// <summary>The work that waits at the moment of the first start, counted back from it in minutes.</summary>
internal sealed class DemoToday(DemoDays days, DemoSteps steps, DemoTesters testers)
{
    private const int MinutesVerified = 70;

    public IEnumerable<DemoStep> Steps()
    {
        var verified = days.Ago(MinutesVerified);
        return
        [
            .. testers.Today(verified > days.TodayBegan ? verified : days.TodayBegan),
            .. OnItsWay(), .. ToBeDecided(), .. DuplicateDue(), .. NotBegun(), .. WithoutOperator(),
        ];
    }

    private IEnumerable<DemoStep> OnItsWay()
    {
        var batch = Batch(0, DemoProduct.Plain, DemoProduct.Plain.Tanks[0]);
        return [.. Made(batch, 300, 360), steps.Announced(batch, batch.Sample("running", 2), days.Ago(45), "The boat brings it with the next round.")];
    }

    private IEnumerable<DemoStep> ToBeDecided()
    {
        var batch = Batch(1, DemoProduct.Plain, DemoProduct.Plain.Tanks[1]);
        var sample = batch.Sample("running", 2);
        return
        [
            .. Made(batch, 320, 180), .. steps.Drawn(batch, sample, days.Ago(180)),
            steps.Measured(batch, sample, 1, days.Ago(55), batch.Bottle(sample, 1)),
        ];
    }

    // From a line: the tanks of this grade hold batches that are still open.
    private IEnumerable<DemoStep> DuplicateDue()
    {
        var batch = Batch(2, DemoProduct.WithEthanol, null);
        var sample = batch.Sample("line", 3);
        return
        [
            .. Made(batch, 280, 300), .. steps.Drawn(batch, sample, days.Ago(170)),
            steps.EthanolMeasured(batch, days.Ago(60)),
            steps.Measured(batch, sample, 1, days.Ago(50), batch.Bottle(sample, 1)),
        ];
    }

    private IEnumerable<DemoStep> NotBegun()
    {
        var batch = Batch(3, DemoProduct.Blendstock, DemoProduct.Blendstock.Tanks[0]);
        return [.. Made(batch, 330, 420), .. steps.Drawn(batch, batch.Sample("running", 2), days.Ago(110))];
    }

    private IEnumerable<DemoStep> WithoutOperator()
    {
        var batch = Batch(4, DemoProduct.Plain, null);
        var sample = batch.Sample("jetty", 2) with { Point = DemoReference.JettyLine };
        return
        [
            .. Made(batch, 270, 480), .. steps.Drawn(batch, sample, days.Ago(150)),
            steps.Sent(batch, sample, 1, days.Ago(20)),
        ];
    }

    private IEnumerable<DemoStep> Made(DemoBatch batch, int minutesAgo, int neededInMinutes)
    {
        if (batch.Tank is not null)
            yield return steps.Filled(batch, days.Ago(minutesAgo));
        yield return steps.Registered(batch, days.Ago(minutesAgo - 10), days.Ago(-neededInMinutes));
    }

    private DemoBatch Batch(int number, DemoProduct product, string? tank) => new(
        DemoBatch.NumberOf(days, days.Count + number), product, DemoMarket.On(product, days.Today), tank,
        DemoPeople.Ines, DemoInstrumentActs.First, Back: 0);
}
