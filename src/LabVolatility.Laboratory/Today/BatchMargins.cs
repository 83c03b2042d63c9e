using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Today;

/// <summary>Loads the margins of the last batches that were decided, as frozen.</summary>
internal static class BatchMargins
{
    private const int Most = 10;

    public static async Task<IReadOnlyList<BatchMargin>> LoadAsync(LabContext context, CancellationToken cancel)
    {
        var rows = await context.Decisions.AsNoTracking()
            .Where(d => d.Kind != DecisionKind.Withdraw && d.Kind != DecisionKind.Hold
                && !context.Decisions.Any(l => l.BatchId == d.BatchId && l.Sequence > d.Sequence))
            .OrderByDescending(d => d.At).Take(Most)
            .Join(context.Assessments, d => d.AssessmentId, a => a.Id, (d, a) => new { d.Kind, d.At, a.Evidence }).ToListAsync(cancel);
        return [.. rows.OrderByDescending(r => r.At).Select(r => Of(r.Kind, r.At, EvidenceText.Read(r.Evidence)))];
    }

    private static BatchMargin Of(DecisionKind kind, DateTimeOffset at, Evidence evidence) =>
        new(evidence.Batch, evidence.Grade, evidence.Tank, kind, at, BindingLimit.Of(evidence));
}
