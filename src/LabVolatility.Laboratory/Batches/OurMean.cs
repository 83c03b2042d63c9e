using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Bench;

namespace LabVolatility.Laboratory.Batches;

/// <summary>What of ours is like another party's result: same quantity, same correlation, same method.</summary>
/// <param name="Value">The unrounded mean; null where nothing is like it.</param>
/// <param name="Results">The determinations that make it.</param>
/// <param name="Why">Why there is none.</param>
internal sealed record OurMean(decimal? Value, IReadOnlyList<DeterminationState> Results, string? Why)
{
    public static OurMean For(PartyResult theirs, PressureUnit unit, IReadOnlyList<AssessedSample> samples, IReadOnlyList<LevelEvidence> levels)
    {
        var chosen = samples.Where(s => s.Counts && (theirs.SampleNumber is null || s.Sample.Number == theirs.SampleNumber)).ToList();
        var values = SampleValues.Of(Like(theirs, unit), unit, chosen);
        if (values.Count == 0)
            return None($"{WhatWeHave(chosen)} Theirs is {theirs.Quantity} ({theirs.Correlation}) by {theirs.Method}: unlike things are not compared.");
        if (values.FirstOrDefault(v => !v.Sample.Evidence.Usable) is { } unsettled)
            return None($"Our own results of sample {unsettled.Sample.Sample.Number} are not settled. {unsettled.Sample.Evidence.Duplicates}");
        if (values.Count > 1 && levels.Any(l => l.Quantity == theirs.Quantity && l.Agree != true))
            return None("Our samples are not shown to agree with each other: say which of them was split.");
        var results = values.SelectMany(v => v.Results).ToList();
        return new OurMean(results.Sum(r => r.Value) / results.Count, [.. results.Select(r => r.State)], null);
    }

    // What a limit of theirs would ask for: the same question as whether a result may answer a limit.
    private static Limit Like(PartyResult theirs, PressureUnit unit) => new(
        "", theirs.Quantity, theirs.Correlation, null, null, unit.Symbol(), 0, [theirs.Method], null, new NoAllowance(), Standing.Contract,
        "", FactStatus.Laboratory, null, null, false, null);

    private static OurMean None(string why) => new(null, [], why);

    private static string WhatWeHave(IReadOnlyList<AssessedSample> samples)
    {
        var ours = samples.SelectMany(s => s.Used).SelectMany(d => d.Results.Where(r => r.Correlation.Length > 0).Select(r => $"{r.Quantity} ({r.Correlation}) by {d.Method}"))
            .Distinct().ToList();
        return ours.Count == 0 ? "We have no result yet." : $"Ours is {string.Join(", ", ours)}.";
    }
}
