using System.Diagnostics.CodeAnalysis;
using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Lists batches, a page at a time.</summary>
[SuppressMessage("Globalization", "CA1309", Justification = "string.Compare is translated: the database compares as it orders.")]
public sealed class ReadBatches(Func<LabContext> open)
{
    public const int PageSize = 50;

    public async Task<BatchesPage> Run(BatchesFilter filter, CancellationToken cancel = default)
    {
        await using var context = open();
        var chosen = Where(context, filter);
        var rows = await (filter.ByNeed ? ByNeed(chosen, filter.After) : Newest(chosen, filter.After)).Take(PageSize + 1).ToListAsync(cancel);
        var page = rows.Take(PageSize).ToList();
        var grades = await context.Grades.AsNoTracking().OrderBy(g => g.Code).Select(g => g.Code).ToListAsync(cancel);
        return new BatchesPage(await LinesAsync(context, page, cancel), rows.Count > PageSize ? CursorOf(page[^1], filter) : null, grades);
    }

    /// <summary>Batches with outcome and decision in force, in the order given.</summary>
    internal static async Task<IReadOnlyList<ListedBatch>> LinesAsync(LabContext context, IReadOnlyList<Batch> batches, CancellationToken cancel)
    {
        var inForce = await InForceAsync(context, [.. batches.Select(b => b.Id)], cancel);
        var waiting = batches.Select(b => b.Id).Where(id => !inForce.TryGetValue(id, out var d) || d.Decision.Kind == DecisionKind.Withdraw).ToList();
        var evidence = await BatchAssessing.WorkOutAllAsync(context, waiting, cancel);
        return [.. batches.Select(b => Line(b, inForce.GetValueOrDefault(b.Id), evidence.GetValueOrDefault(b.Id)))];
    }

    private static ListedBatch Line(Batch batch, (DecisionInForce Decision, Outcome? Frozen) last, Evidence? now) =>
        new(batch, now?.Outcome ?? last.Frozen ?? Outcome.Incomplete, last.Decision);

    private static async Task<Dictionary<Guid, (DecisionInForce Decision, Outcome? Frozen)>> InForceAsync(
        LabContext context, List<Guid> batches, CancellationToken cancel)
    {
        var decisions = await context.Decisions.AsNoTracking()
            .Where(d => batches.Contains(d.BatchId) && !context.Decisions.Any(l => l.BatchId == d.BatchId && l.Sequence > d.Sequence))
            .Select(d => new
            {
                Decision = d,
                Marked = context.ReviewMarks.Any(m => m.DecisionId == d.Id),
                Outcome = context.Assessments.Where(a => a.Id == d.AssessmentId).Select(a => (Outcome?)a.Outcome).FirstOrDefault(),
            }).ToListAsync(cancel);
        return decisions.ToDictionary(d => d.Decision.BatchId, d => (DecisionInForce.Of(d.Decision, d.Marked), d.Outcome));
    }

    private static IQueryable<Batch> Where(LabContext context, BatchesFilter filter)
    {
        var batches = context.Batches.AsNoTracking();
        if (!string.IsNullOrWhiteSpace(filter.Grade))
            batches = batches.Where(b => b.GradeCode == filter.Grade);
        if (!string.IsNullOrWhiteSpace(filter.Text))
        {
            // Codes are mostly written in capitals; what was typed otherwise is tried as typed, too: engines differ in LIKE.
            var (typed, capitals) = (filter.Text.Trim(), filter.Text.Trim().ToUpperInvariant());
            batches = batches.Where(b =>
                b.Number.Contains(typed) || b.Number.Contains(capitals) || b.GradeCode.Contains(typed) || b.GradeCode.Contains(capitals)
                || (b.TankCode != null && (b.TankCode.Contains(typed) || b.TankCode.Contains(capitals))));
        }

        var last = context.Decisions.Where(d => !context.Decisions.Any(l => l.BatchId == d.BatchId && l.Sequence > d.Sequence));
        return filter.Standing switch
        {
            BatchStanding.Waiting => batches.Where(b => !last.Any(d => d.BatchId == b.Id && d.Kind != DecisionKind.Withdraw)),
            BatchStanding.OnHold => batches.Where(b => last.Any(d => d.BatchId == b.Id && d.Kind == DecisionKind.Hold)),
            BatchStanding.Released => batches.Where(b => last.Any(d => d.BatchId == b.Id && (d.Kind == DecisionKind.Release || d.Kind == DecisionKind.Concession))),
            BatchStanding.Rejected => batches.Where(b => last.Any(d => d.BatchId == b.Id && d.Kind == DecisionKind.Reject)),
            BatchStanding.ForReview => batches.Where(b => last.Any(d => d.BatchId == b.Id && context.ReviewMarks.Any(m => m.DecisionId == d.Id))),
            _ => batches,
        };
    }

    private static IQueryable<Batch> Newest(IQueryable<Batch> batches, BatchCursor? after)
    {
        if (after is not null)
            batches = batches.Where(b => b.CreatedAt < after.At || (b.CreatedAt == after.At && string.Compare(b.Number, after.Number) < 0));
        return batches.OrderByDescending(b => b.CreatedAt).ThenByDescending(b => b.Number);
    }

    private static IQueryable<Batch> ByNeed(IQueryable<Batch> batches, BatchCursor? after)
    {
        batches = batches.Where(b => b.NeededBy != null);
        if (after is not null)
            batches = batches.Where(b => b.NeededBy > after.At || (b.NeededBy == after.At && string.Compare(b.Number, after.Number) > 0));
        return batches.OrderBy(b => b.NeededBy).ThenBy(b => b.Number);
    }

    private static BatchCursor CursorOf(Batch batch, BatchesFilter filter) =>
        new(filter.ByNeed ? batch.NeededBy!.Value : batch.CreatedAt, batch.Number);
}
