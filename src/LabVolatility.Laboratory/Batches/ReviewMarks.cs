using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Marks the releases in force whose evidence changed: the rule "a change after the decision is seen by everybody".</summary>
internal static class ReviewMarks
{
    public const string Rule = "changed-evidence-marks-the-decision";

    /// <summary>
    /// Works each batch's evidence out anew and marks its release in force where it is no longer what was signed.
    /// Call it after the change was saved, in the same transaction.
    /// </summary>
    public static async Task MarkAsync(
        LabContext context, IReadOnlyList<Guid> batchIds, string cause, DateTimeOffset now, CancellationToken cancel)
    {
        if (batchIds.Count == 0)
            return;
        var marked = false;
        foreach (var batchId in batchIds)
        {
            var inForce = await context.Decisions.AsNoTracking().Where(d => d.BatchId == batchId)
                .OrderByDescending(d => d.Sequence).FirstOrDefaultAsync(cancel);
            if (inForce is null || inForce.Kind is not (DecisionKind.Release or DecisionKind.Concession))
                continue;
            var evidence = await BatchAssessing.WorkOutAsync(context, batchId, cancel);
            if (EvidenceText.Hash(EvidenceText.Of(evidence)) == inForce.EvidenceHash)
                continue;
            context.ReviewMarks.Add(new ReviewMark { Id = Guid.NewGuid(), DecisionId = inForce.Id, At = now, Cause = cause });
            marked = true;
        }

        if (marked)
            await context.SaveChangesAsync(cancel);
    }
}
