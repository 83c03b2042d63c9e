using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Batches;

/// <summary>The batch as it stands now: evidence, its hash, and the decisions taken.</summary>
public sealed class AssessBatch(Func<LabContext> open)
{
    /// <param name="Evidence">Worked out from what is recorded now.</param>
    /// <param name="EvidenceHash">What a signer signs on.</param>
    /// <param name="InForce">The decision in force, or null.</param>
    /// <param name="Decisions">All decisions, the first one first.</param>
    /// <param name="ReviewMarks">Why the decision in force is marked for review.</param>
    public sealed record Assessed(
        Evidence Evidence, string EvidenceHash, DecisionInForce? InForce, IReadOnlyList<Decision> Decisions, IReadOnlyList<ReviewMark> ReviewMarks);

    /// <returns>Null where there is no such batch.</returns>
    public async Task<Assessed?> Run(string number, CancellationToken cancel = default)
    {
        await using var context = open();
        var id = await context.Batches.AsNoTracking().Where(b => b.Number == number).Select(b => (Guid?)b.Id).FirstOrDefaultAsync(cancel);
        if (id is null)
            return null;
        var evidence = await BatchAssessing.WorkOutAsync(context, id.Value, cancel);
        var decisions = await context.Decisions.AsNoTracking().Where(d => d.BatchId == id).OrderBy(d => d.Sequence).ToListAsync(cancel);
        var last = decisions.LastOrDefault();
        var marks = last is null ? [] : await context.ReviewMarks.AsNoTracking().Where(m => m.DecisionId == last.Id).OrderBy(m => m.At).ToListAsync(cancel);
        return new Assessed(
            evidence, EvidenceText.Hash(EvidenceText.Of(evidence)), last is null ? null : DecisionInForce.Of(last, marks.Count > 0), decisions, marks);
    }
}
