using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Today;

/// <summary>Loads the batches that wait for a decision, the one needed first on top.</summary>
internal static class WaitingBatches
{
    private const int Most = 30;
    private static readonly TimeSpan Missed = TimeSpan.FromDays(1);

    public static async Task<IReadOnlyList<WaitingBatch>> LoadAsync(LabContext context, DateTimeOffset now, CancellationToken cancel)
    {
        var missed = now - Missed;
        var last = context.Decisions.Where(d => !context.Decisions.Any(l => l.BatchId == d.BatchId && l.Sequence > d.Sequence));
        var batches = await context.Batches.AsNoTracking()
            .Where(b => !last.Any(d => d.BatchId == b.Id && d.Kind != DecisionKind.Withdraw && d.Kind != DecisionKind.Hold))
            .OrderBy(b => b.NeededBy == null ? 1 : b.NeededBy >= missed ? 0 : 2).ThenByDescending(b => b.CreatedAt).Take(Most).ToListAsync(cancel);
        var ids = batches.Select(b => b.Id).ToList();
        var evidence = await BatchAssessing.WorkOutAllAsync(context, ids, cancel);
        var decisions = await last.AsNoTracking().Where(d => ids.Contains(d.BatchId)).ToDictionaryAsync(d => d.BatchId, cancel);
        var tests = await TestsAsync(context, ids, cancel);
        var usual = await UsualTimes.LoadAsync(context, cancel);
        var left = await SealedAsync(context, ids, cancel);
        return [.. InOrder(batches, now).Select(b => new WaitingBatch(
            b, evidence[b.Id], decisions.TryGetValue(b.Id, out var d) ? DecisionInForce.Of(d, false) : null, left.GetValueOrDefault(b.Id))
        {
            LastResultDue = tests[b.Id].Max(t => t.DueAt),
            LastResultExpected = Expected([.. tests[b.Id]], usual, now),
        })];
    }

    // What is past its usual time is to be expected at any moment; of a sample that is not here yet the time begins now at the earliest.
    private static DateTimeOffset? Expected(List<Waiting> tests, IReadOnlyDictionary<string, TimeSpan> usual, DateTimeOffset now)
    {
        if (tests.Count == 0 || !tests.TrueForAll(t => usual.ContainsKey(t.Method)))
            return null;
        var last = tests.Max(t => (t.ReceivedAt ?? now) + usual[t.Method]);
        return last > now ? last : now;
    }

    // The next slot first, one missed within a day before that; slots long past say little about now.
    private static IEnumerable<Batch> InOrder(List<Batch> batches, DateTimeOffset now)
    {
        var missed = now - Missed;
        return batches.OrderBy(b => b.NeededBy is null ? 1 : b.NeededBy >= missed ? 0 : 2)
            .ThenBy(b => b.NeededBy >= missed ? b.NeededBy : null).ThenByDescending(b => b.NeededBy).ThenByDescending(b => b.CreatedAt);
    }

    private static async Task<ILookup<Guid, Waiting>> TestsAsync(LabContext context, List<Guid> batches, CancellationToken cancel) =>
        (await context.Samples.Where(s => s.BatchId != null && batches.Contains(s.BatchId.Value) && s.State != SampleState.Refused)
            .SelectMany(s => s.Tests.Where(t => t.State == TestState.Waiting), (s, t) => new Waiting(s.BatchId!.Value, t.Method, s.ReceivedAt, t.DueAt))
            .ToListAsync(cancel)).ToLookup(t => t.Batch);

    private static async Task<Dictionary<Guid, int>> SealedAsync(LabContext context, List<Guid> batches, CancellationToken cancel) =>
        await context.Samples.Where(s => s.BatchId != null && batches.Contains(s.BatchId.Value) && s.State != SampleState.Refused)
            .SelectMany(s => s.Containers.Where(c => c.Openings.Count == 0 && c.DisposedAt == null && !c.Leaking), (s, c) => new { Batch = s.BatchId!.Value, c.Id })
            .GroupBy(x => x.Batch).Select(g => new { g.Key, Count = g.Count() }).ToDictionaryAsync(g => g.Key, g => g.Count, cancel);

    private sealed record Waiting(Guid Batch, string Method, DateTimeOffset? ReceivedAt, DateTimeOffset? DueAt);
}
