using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Writes a hand-over note on a batch: it waits for who decides, and is never changed.</summary>
public sealed class WriteHandover(Func<LabContext> open, TimeProvider clock)
{
    private const string CommandName = "write hand-over note";

    /// <param name="CommandId">The same id sent again writes nothing twice.</param>
    /// <param name="Batch">Number of the batch.</param>
    /// <param name="Handover">What is handed over.</param>
    public sealed record Request(Guid CommandId, string Batch, Handover Handover);

    /// <returns>The note's id.</returns>
    public async Task<Answer<Guid>> Run(Actor actor, Request request, CancellationToken cancel = default)
    {
        if (actor.IsKey || !actor.May(Right.Determine))
            return Answer<Guid>.Forbidden($"Handing over is for the {Rights.HoldersText(Right.Determine)}.");
        if (request.Handover.Problems().ToList() is { Count: > 0 } problems)
            return Answer<Guid>.Invalid(problems);
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var earlier = await EarlierCommand.FindAsync(context, request.CommandId, CommandName, cancel);
        if (earlier.IsOther)
            return Answer<Guid>.Conflict(EarlierCommand.Taken);
        if (earlier.Subject is { } known)
            return Answer<Guid>.Repeated(Guid.Parse(known));
        var batch = await context.Batches.Where(b => b.Number == request.Batch).Select(b => (Guid?)b.Id).FirstOrDefaultAsync(cancel);
        if (batch is null)
            return Answer<Guid>.NotFound($"There is no batch {request.Batch}.");

        var now = clock.GetUtcNow();
        var note = request.Handover.Note(batch.Value, null, actor, now);
        context.HandoverNotes.Add(note);
        context.Commands.Add(new PerformedCommand { Id = request.CommandId, Name = CommandName, Subject = note.Id.ToString(), At = now });
        context.Act = actor.Does(CommandName);
        await context.SaveChangesAsync(cancel);
        await transaction.CommitAsync(cancel);
        return Answer<Guid>.Done(note.Id);
    }
}
