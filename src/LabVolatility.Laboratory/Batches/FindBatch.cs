using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Batches;

/// <summary>One batch with its samples' numbers and the decision in force.</summary>
public sealed class FindBatch(Func<LabContext> open)
{
    public sealed record Found(Batch Batch, IReadOnlyList<string> Samples, DecisionInForce? InForce);

    /// <returns>Null where there is no such batch.</returns>
    public async Task<Found?> Run(string number, CancellationToken cancel = default)
    {
        await using var context = open();
        var batch = await context.Batches.AsNoTracking().FirstOrDefaultAsync(b => b.Number == number, cancel);
        if (batch is null)
            return null;
        var samples = await context.Samples.AsNoTracking().Where(s => s.BatchId == batch.Id)
            .OrderBy(s => s.SampledAt).ThenBy(s => s.Number).Select(s => s.Number).ToListAsync(cancel);
        var last = await context.Decisions.AsNoTracking().Where(d => d.BatchId == batch.Id)
            .OrderByDescending(d => d.Sequence).FirstOrDefaultAsync(cancel);
        var forReview = last is not null && await context.ReviewMarks.AnyAsync(m => m.DecisionId == last.Id, cancel);
        return new Found(batch, samples, last is null ? null : DecisionInForce.Of(last, forReview));
    }
}
