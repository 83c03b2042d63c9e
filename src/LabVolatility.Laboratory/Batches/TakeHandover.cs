using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Somebody else than its writer takes a hand-over note: name and time are recorded, and it waits no longer.</summary>
public sealed class TakeHandover(Func<LabContext> open, TimeProvider clock)
{
    public const string Rule = "another-person-takes-over";

    public async Task<Answer<Guid>> Run(Actor actor, Guid note, CancellationToken cancel = default)
    {
        if (actor.IsKey || !actor.May(Right.Decide))
            return Answer<Guid>.Forbidden($"Taking over is for the {Rights.HoldersText(Right.Decide)}.");
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var row = await context.HandoverNotes.AsNoTracking().Include(n => n.Taken).FirstOrDefaultAsync(n => n.Id == note, cancel);
        if (row is null)
            return Answer<Guid>.NotFound("There is no such hand-over note.");
        if (row.Taken is { } taken)
            return taken.By == actor.Id ? Answer<Guid>.Repeated(note) : Answer<Guid>.Conflict($"{taken.ByName} has taken it already.");
        if (row.By == actor.Id)
            return Answer<Guid>.Refused(new Problem("", "You wrote this note: somebody else takes it.", Rule));
        context.HandoverTakings.Add(new HandoverTaken { NoteId = note, By = actor.Id, ByName = actor.Name, At = clock.GetUtcNow() });
        context.Act = actor.Does("take hand-over note");
        await context.SaveChangesAsync(cancel);
        await transaction.CommitAsync(cancel);
        return Answer<Guid>.Done(note);
    }
}
