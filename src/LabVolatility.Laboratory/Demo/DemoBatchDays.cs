using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Demo;

/// <summary>The batches on which nothing out of the ordinary happens: filled at night, measured in the morning, gone by afternoon.</summary>
internal sealed class DemoBatchDays(DemoDays days, DemoSteps steps)
{
    public IEnumerable<DemoStep> Of(int day)
    {
        var batch = DemoBatch.Of(days, day);
        return [.. Filled(batch, day), .. HasLevels(batch) ? Levels(batch, day) : Running(batch, day), .. Gone(batch, day)];
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
    public IEnumerable<DemoStep> Levels(DemoBatch batch, int day, decimal upper = 0m, decimal middle = 0m, int hour = 6, string again = "")
    {
        (SampleLevel Level, decimal Above)[] levels = [(SampleLevel.Upper, upper), (SampleLevel.Middle, middle), (SampleLevel.Lower, 0m)];
        foreach (var (index, (level, above)) in levels.Index())
        {
            var sample = batch.Sample($"{level}{again}", 1, level);
            yield return steps.Brought(batch.Analyst, sample, days.At(day, hour, 30 + (5 * index)), days.At(day, hour + 1, 10 + (5 * index)));
            yield return steps.Measured(batch, sample, 1, days.At(day, hour + 2, 10 + (15 * index)), batch.Bottle(sample, 1) + above);
        }
    }

    public IEnumerable<DemoStep> Gone(DemoBatch batch, int day) =>
        [.. steps.Released(batch, days.At(day, 10, 30), SignerOf(day)), steps.Delivered(batch, days.At(day, 13))];

    // Blendstock and plain gasoline lie in tanks that are not mixed; of the other grades every second one is sampled at levels.
    private static bool HasLevels(DemoBatch batch) =>
        !batch.HasEthanol && (batch.Product != DemoProduct.Super || batch.Back / DemoProduct.All.Count % 2 == 0);

    private string SignerOf(int day) =>
        days.Day(day).DayOfWeek is DayOfWeek.Saturday or DayOfWeek.Sunday ? DemoPeople.Kola : DemoPeople.Tessa;
}
