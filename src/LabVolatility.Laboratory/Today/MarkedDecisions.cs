using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Today;

/// <summary>Loads the decisions in force that are marked for review.</summary>
internal static class MarkedDecisions
{
    private const int Most = 50;

    public static async Task<IReadOnlyList<MarkedDecision>> LoadAsync(LabContext context, CancellationToken cancel)
    {
        var rows = await context.ReviewMarks.AsNoTracking()
            .Join(context.Decisions, m => m.DecisionId, d => d.Id, (m, d) => new { Mark = m, Decision = d })
            .Where(x => !context.Decisions.Any(l => l.BatchId == x.Decision.BatchId && l.Sequence > x.Decision.Sequence))
            .Join(context.Batches, x => x.Decision.BatchId, b => b.Id, (x, b) => new { x.Mark, x.Decision, b.Number })
            .OrderByDescending(x => x.Mark.At).Take(Most).ToListAsync(cancel);
        return [.. rows.DistinctBy(r => r.Decision.Id).Select(r => new MarkedDecision(
            r.Number, r.Decision.Kind, r.Decision.PersonName, r.Decision.At, r.Mark.At, r.Mark.Cause))];
    }
}
