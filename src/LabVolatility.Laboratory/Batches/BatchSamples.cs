using LabVolatility.Core.Precision;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Loads the samples of a batch with everything that bears on them.</summary>
internal static class BatchSamples
{
    public static async Task<IReadOnlyList<AssessedSample>> LoadAsync(
        LabContext context, Batch batch, LaboratoryTime time, IReadOnlyList<PrecisionStatement> precision, int resultsInAll,
        CancellationToken cancel)
    {
        var samples = await context.Samples.AsNoTracking().Where(s => s.BatchId == batch.Id)
            .Include(s => s.Containers).ThenInclude(c => c.Openings).Include(s => s.Tests).AsSplitQuery()
            .OrderBy(s => s.SampledAt).ThenBy(s => s.Number).ToListAsync(cancel);
        var determinations = await DeterminationStates.LoadAsync(context, [.. samples.Select(s => s.Id)], cancel);
        var tanks = samples.Select(s => s.TankCode).OfType<string>().Distinct().ToList();
        var since = samples.Count == 0 ? DateTimeOffset.MaxValue : samples.Min(s => s.SampledAt);
        var movements = tanks.Count == 0 ? [] : await context.TankMovements.AsNoTracking()
            .Where(m => tanks.Contains(m.TankCode) && m.At > since).ToListAsync(cancel);
        var released = await FirstReleaseAsync(context, batch.Id, cancel);
        var readiness = await InstrumentDays.LoadAsync(context, determinations, time, cancel);
        return [.. samples.Select(Assess)];

        AssessedSample Assess(Sample sample)
        {
            var own = determinations.Where(d => d.SampleId == sample.Id).ToList();
            // Once released, the tank is free to move: only what happened before the decision speaks of the sample.
            var before = movements.Where(m => released is null || m.At <= released);
            var reason = MovementVoidsSample.Reason(sample, before, time);
            var verdicts = sample.Tests.Where(t => t.State != TestState.Cancelled || own.Any(d => d.TestId == t.Id))
                .OrderBy(t => t.Method, StringComparer.Ordinal).ThenBy(t => t.Id)
                .Select(t => SampleDuplicates.Judge(t, own, precision, resultsInAll)).OfType<DuplicateVerdict>().ToList();
            var usable = verdicts.All(v => v.Next == NextStep.Report);
            return new AssessedSample(sample, own, SampleText.Of(sample, own, reason, verdicts, usable, readiness), Used(sample, own, precision, resultsInAll));
        }
    }

    private static async Task<DateTimeOffset?> FirstReleaseAsync(LabContext context, Guid batchId, CancellationToken cancel)
    {
        var inForce = await context.Decisions.AsNoTracking().Where(d => d.BatchId == batchId)
            .OrderByDescending(d => d.Sequence).Select(d => new { d.Kind, d.At }).FirstOrDefaultAsync(cancel);
        return inForce?.Kind is DecisionKind.Release or DecisionKind.Concession ? inForce.At : null;
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
