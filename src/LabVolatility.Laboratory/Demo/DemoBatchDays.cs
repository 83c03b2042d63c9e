using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Demo;

/// <summary>The batches on which nothing out of the ordinary happens: filled at night, measured in the morning, gone by afternoon.</summary>
internal sealed class DemoBatchDays(DemoDays days, DemoSteps steps)
{
    // Every third batch of blendstock is sampled at three levels.
    public static bool HasLevels(int day) => day % 9 == 8;

    public IEnumerable<DemoStep> Of(int day)
    {
        var batch = DemoBatch.Of(days, day);
        return [.. Filled(batch, day), .. HasLevels(day) ? Levels(batch, day) : Running(batch, day), .. Gone(batch, day)];
    }

    public IEnumerable<DemoStep> Filled(DemoBatch batch, int day, string? note = null) =>
        [steps.Filled(batch, days.At(day, 3, 10)), steps.Registered(batch, days.At(day, 5, 30), days.At(day, 14), note)];

    /// <summary>One running sample; a second bottle where the grade asks for a duplicate, and one that is kept.</summary>
    public IEnumerable<DemoStep> Running(DemoBatch batch, int day, bool hazy = false)
    {
        var tests = batch.HasEthanol ? 2 : 1;
        var sample = batch.Sample("running", tests + 1);
        foreach (var step in steps.Drawn(batch, sample, days.At(day, 6, 50)))
            yield return step;
        for (var bottle = 1; bottle <= tests; bottle++)
            yield return steps.Measured(batch, sample, bottle, days.At(day, 8, 10 + (25 * (bottle - 1))), batch.Bottle(sample, bottle), hazy);
        if (batch.HasEthanol)
            yield return steps.EthanolMeasured(batch, days.At(day, 9, 20));
    }

    /// <summary>Upper, middle and lower, a bottle each; what each lies above the batch's value.</summary>
    public IEnumerable<DemoStep> Levels(DemoBatch batch, int day, decimal upper = 0m, decimal middle = 0m)
    {
        (SampleLevel Level, decimal Above)[] levels = [(SampleLevel.Upper, upper), (SampleLevel.Middle, middle), (SampleLevel.Lower, 0m)];
        foreach (var (index, (level, above)) in levels.Index())
        {
            var sample = batch.Sample(level.ToString(), 1, level);
            foreach (var step in steps.Drawn(batch, sample, days.At(day, 6, 30 + (10 * index))))
                yield return step;
            yield return steps.Measured(batch, sample, 1, days.At(day, 8, 10 + (15 * index)), batch.Bottle(sample, 1) + above);
        }
    }

    public IEnumerable<DemoStep> Gone(DemoBatch batch, int day) =>
        [.. steps.Released(batch, days.At(day, 10, 30)), steps.Delivered(batch, days.At(day, 13))];
}
