using LabVolatility.Core.Precision;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Loads the samples of batches with everything that bears on them.</summary>
internal static class BatchSamples
{
    /// <param name="context">The laboratory.</param>
    /// <param name="batches">The batches, each with the results in all of its grade once duplicates disagree.</param>
    /// <param name="time">The laboratory's time.</param>
    /// <param name="precision">The statements of r and R in force.</param>
    /// <param name="cancel">Stops loading.</param>
    /// <returns>The samples by batch, in the order of sampling; as few statements for many batches as for one.</returns>
    public static async Task<ILookup<Guid, AssessedSample>> LoadAsync(
        LabContext context, IReadOnlyList<(Batch Batch, int ResultsInAll)> batches, LaboratoryTime time,
        IReadOnlyList<PrecisionStatement> precision, CancellationToken cancel)
    {
        var ids = batches.Select(b => b.Batch.Id).ToList();
        var samples = await context.Samples.AsNoTracking().Where(s => s.BatchId != null && ids.Contains(s.BatchId.Value))
            .Include(s => s.Containers).ThenInclude(c => c.Openings).Include(s => s.Tests).AsSplitQuery()
            .OrderBy(s => s.SampledAt).ThenBy(s => s.Number).ToListAsync(cancel);
        var determinations = await DeterminationStates.LoadAsync(context, [.. samples.Select(s => s.Id)], cancel);
        var known = batches.ToDictionary(b => b.Batch.Id);
        var tanks = samples.Select(TankOf).OfType<string>().Distinct().ToList();
        var since = samples.Count == 0 ? DateTimeOffset.MaxValue : samples.Min(s => s.SampledAt);
        var movements = tanks.Count == 0 ? [] : await context.TankMovements.AsNoTracking()
            .Where(m => tanks.Contains(m.TankCode) && m.At > since).ToListAsync(cancel);
        var released = await FirstReleasesAsync(context, ids, cancel);
        var blends = await HandBlends.LoadAsync(context, [.. samples.Select(s => s.Id)], cancel);
        var readiness = await InstrumentDays.LoadAsync(context, determinations, time, cancel);
        var bySample = determinations.ToLookup(d => d.SampleId);
        var numbers = samples.ToDictionary(s => s.Id, s => s.Number);
        return samples.ToLookup(s => s.BatchId!.Value, Assess);

        string? TankOf(Sample sample) => sample.TankCode ?? known[sample.BatchId!.Value].Batch.TankCode;

        AssessedSample Assess(Sample sample)
        {
            var (batch, resultsInAll) = known[sample.BatchId!.Value];
            var own = bySample[sample.Id].ToList();
            // Once released, the tank is free to move: only what happened before the decision speaks of the sample.
            var before = movements.Where(m => !released.TryGetValue(batch.Id, out var at) || m.At <= at);
            // What was called for is drawn later than it was announced: a movement says nothing of it yet.
            var reason = sample.SampledBy.Length == 0 ? null : MovementVoidsSample.Reason(sample, TankOf(sample), before, time);
            var verdicts = sample.Tests.Where(t => t.State != TestState.Cancelled || own.Any(d => d.TestId == t.Id))
                .OrderBy(t => t.Method, StringComparer.Ordinal).ThenBy(t => t.Id)
                .Select(t => SampleDuplicates.Judge(t, own, precision, resultsInAll)).OfType<DuplicateVerdict>().ToList();
            var usable = verdicts.All(v => v.Next == NextStep.Report);
            return new AssessedSample(
                sample, own, SampleText.Of(sample, numbers.GetValueOrDefault(sample.ResampleOf ?? Guid.Empty), own, reason, verdicts, usable, readiness) with { HandBlend = blends.GetValueOrDefault(sample.Id) },
                Used(sample, own, precision, resultsInAll),
                [.. own.Where(d => d.DoesNotCount is null && readiness.IsInDoubt(d))]);
        }
    }

    private static async Task<Dictionary<Guid, DateTimeOffset>> FirstReleasesAsync(LabContext context, List<Guid> batches, CancellationToken cancel)
    {
        var decisions = await context.Decisions.AsNoTracking().Where(d => batches.Contains(d.BatchId))
            .OrderByDescending(d => d.Sequence).Select(d => new { d.BatchId, d.Kind, d.At }).ToListAsync(cancel);
        // A release signed again after review does not undo that the tank was free to move since the first one.
        return decisions.GroupBy(d => d.BatchId)
            .Select(g => (g.Key, First: g.TakeWhile(d => d.Kind is DecisionKind.Release or DecisionKind.Concession).LastOrDefault()))
            .Where(x => x.First is not null).ToDictionary(x => x.Key, x => x.First!.At);
    }

    private static List<DeterminationState> Used(
        Sample sample, List<DeterminationState> own, IReadOnlyList<PrecisionStatement> precision, int resultsInAll)
    {
        var used = new List<DeterminationState>();
        foreach (var test in sample.Tests)
        {
            var counting = own.Where(d => d.TestId == test.Id && d.DoesNotCount is null).ToList();
            if (SampleDuplicates.Judge(test, own, precision, resultsInAll) is { } verdict)
                used.AddRange(verdict.Used.Select(i => counting[i]));
        }

        return used;
    }
}
