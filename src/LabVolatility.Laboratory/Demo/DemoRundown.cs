using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Demo;

/// <summary>Samples of what leaves the blender, twice a day: they belong to no batch and decide nothing.</summary>
internal sealed class DemoRundown(DemoDays days, DemoSteps steps)
{
    // A line wanders more than a tank.
    private const decimal Wander = 1.3m;

    public IEnumerable<DemoStep> Of(int day) =>
        [.. Sample(day, "early", drawn: (4, 30), here: (5, 10), measured: (6, 45)), .. Sample(day, "late", drawn: (15, 30), here: (16, 5), measured: (16, 40))];

    private IEnumerable<DemoStep> Sample(int day, string name, (int Hour, int Minute) drawn, (int Hour, int Minute) here, (int Hour, int Minute) measured)
    {
        var back = days.Back(day);
        var product = back % 2 == 0 ? DemoProduct.Plain : DemoProduct.Super;
        var market = DemoMarket.On(product, days.Day(day));
        var sample = new DemoSample(
            FormattableString.Invariant($"rundown {days.Day(day):yyyy-MM-dd} {name}"), product, null, null, DemoReference.Rundown, SampleLevel.Spot, 1);
        var value = market.Target + (Wander * market.Spread * DemoName.Scatter(sample.Name));
        var (analyst, tester) = (DemoBatch.AnalystOf(back), DemoTesters.On(product, back));
        yield return steps.Brought(analyst, sample, days.At(day, drawn.Hour, drawn.Minute), days.At(day, here.Hour, here.Minute));
        yield return steps.Measured(
            analyst, tester, sample, 1, days.At(day, measured.Hour, measured.Minute), DemoTesters.Shown(value, sample, 1, tester, back));
    }
}
