using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Bench;

/// <summary>A person takes on a determination that a program sent without an operator: from then on it counts, and they as its measurer.</summary>
public sealed class TakeOnDetermination(Func<LabContext> open, TimeProvider clock)
{
    public async Task<Answer<Guid>> Run(Actor actor, Guid determination, CancellationToken cancel = default)
    {
        if (actor.IsKey || !actor.May(Right.Determine))
            return Answer<Guid>.Forbidden($"Taking on a determination is for the {Rights.HoldersText(Right.Determine)}.");
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var row = await context.Determinations.AsNoTracking().Include(d => d.TakenOn).FirstOrDefaultAsync(d => d.Id == determination, cancel);
        if (row is null)
            return Answer<Guid>.NotFound("There is no such determination.");
        if (row.MeasuredBy is not null || row.TakenOn is not null)
            return Answer<Guid>.Conflict("Somebody has taken it on already.");
        context.TakenOns.Add(new TakenOn { DeterminationId = determination, PersonId = actor.Id, At = clock.GetUtcNow() });
        context.Act = actor.Does("take on determination");
        try
        {
            await context.SaveChangesAsync(cancel);
        }
        catch (DbUpdateException e) when (context.IsUniqueViolation(e))
        {
            return Answer<Guid>.Conflict("Somebody has taken it on already.");
        }

        var test = row.TestId is null ? null : await context.AssignedTests.FirstAsync(t => t.Id == row.TestId, cancel);
        await TestProgress.UpdateAsync(context, test, await PrecisionInForce.LoadAsync(context, cancel), cancel);
        var batch = await context.Samples.Where(s => s.Id == row.SampleId).Select(s => s.BatchId).FirstAsync(cancel);
        await ReviewMarks.MarkAsync(context, batch is { } id ? [id] : [], "a determination was taken on by a person", clock.GetUtcNow(), cancel);
        await transaction.CommitAsync(cancel);
        return Answer<Guid>.Done(determination);
    }
}
