using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Reads from the evidence what calls for a retest or a resample, the most pressing first.</summary>
internal static class RetestFindings
{
    public static IEnumerable<RetestFinding> Of(Evidence evidence, IReadOnlyList<BenchStanding> bench)
    {
        var counting = evidence.Samples.Where(s => s.Void is null && s.State == SampleState.Received).ToList();
        var lost = evidence.Samples.Where(s => s.Void is not null && !IsReplaced(s, evidence)).ToList();
        if (lost.Count > 0)
        {
            yield return new(
                RetestOccasion.SampleVoid, evidence.Batch, string.Join(" ", lost.Select(s => $"Sample {s.Number} is {s.Void}.")), [],
                [.. lost.Select(s => s.Number)]);
        }

        foreach (var sample in counting.Where(s => !s.Usable))
        {
            yield return new(
                RetestOccasion.DuplicatesDiffer, sample.Number, $"Sample {sample.Number}: {sample.Duplicates}",
                [.. bench.Where(b => b.Sample == sample.Number && !b.Settled)], [sample.Number]);
        }

        // What else is to be found shows once the bench has finished what it was asked for.
        if (bench.Any(b => b.State == TestState.Waiting) || counting.Exists(s => !s.Usable))
            yield break;
        string[] numbers = [.. counting.Select(s => s.Number)];
        foreach (var level in evidence.Levels.Where(l => l.Agree == false))
            yield return new(RetestOccasion.LevelsDiffer, level.Quantity, level.Why, [], [.. level.Values.Select(v => v.Sample)]);
        foreach (var party in evidence.Parties.Where(p => p.Kind != PartyKind.ThirdLaboratory && p.Comparison?.Agree == false).TakeLast(1))
        {
            if (evidence.Dispute?.Mean is null)
                yield return new(RetestOccasion.PartyDiffers, party.Quantity, Found(party, evidence.Dispute), Tests(evidence, bench, party.Quantity, null), numbers);
        }

        foreach (var (outcome, occasion) in new[] { (Outcome.DoesNotConform, RetestOccasion.DoesNotConform), (Outcome.NotDecided, RetestOccasion.NotDecided) })
        {
            foreach (var limit in evidence.Limits.Where(l => l.Outcome == outcome).DistinctBy(l => l.Quantity))
                yield return new(occasion, limit.Quantity, Found(limit), Tests(evidence, bench, limit.Quantity, limit), numbers);
        }
    }

    private static string Found(PartyEvidence party, DisputeEvidence? dispute) =>
        $"{party.Party}: {party.Comparison!.Why}{(dispute is null ? "" : $" {dispute.Why}")}";

    private static string Found(LimitEvidence limit) => limit.Outcome != Outcome.NotDecided
        ? limit.OutcomeWhy
        : limit.OutcomeWhy + (limit.ResultsToDecide is { } more
            ? $" {more} more at the present mean would decide."
            : " No number of further results can decide.");

    // The tests that gave the quantity; the sample nearest to an edge first, where the samples differ.
    private static IReadOnlyList<BenchStanding> Tests(Evidence evidence, IReadOnlyList<BenchStanding> bench, string quantity, LimitEvidence? limit)
    {
        var made = evidence.Samples.Where(s => s.Void is null && s.State == SampleState.Received)
            .SelectMany(s => s.Determinations.Where(d => d.DoesNotCount is null && d.Results.Any(r => r.Quantity == quantity)), (s, d) => (s.Number, d.Method))
            .ToHashSet();
        var values = evidence.Levels.Where(l => l.Quantity == quantity).SelectMany(l => l.Values).DistinctBy(v => v.Sample).ToDictionary(v => v.Sample, v => v.Value);
        return [.. bench.Where(b => made.Contains((b.Sample, b.Method)))
            .OrderBy(b => values.TryGetValue(b.Sample, out var value) ? Margin(limit, value) : 0m)];
    }

    private static decimal Margin(LimitEvidence? limit, decimal value) => limit is null ? 0m : Math.Min(
        limit.EffectiveMaximum - value ?? decimal.MaxValue, value - limit.EffectiveMinimum ?? decimal.MaxValue);

    // A sample that was called for in its place, or a later one of its level that stands.
    private static bool IsReplaced(SampleEvidence lost, Evidence evidence) => evidence.Samples.Any(s => s.Void is null
        && (s.State == SampleState.Received ? s.Level == lost.Level && s.SampledAt > lost.SampledAt
            : s.State == SampleState.Announced && s.ResampleOf == lost.Number));
}
