using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Samples;

/// <summary>Records what happened to a tank's contents. Samples drawn before it are void for a decision from then on.</summary>
public sealed class RecordMovement(Func<LabContext> open, TimeProvider clock)
{
    private const string CommandName = "record movement";

    public sealed record Request(Guid CommandId, string Tank, MovementKind Kind, DateTimeOffset At, decimal? CubicMetres, string? Note);

    public async Task<Answer<Guid>> Run(Actor actor, Request request, CancellationToken cancel = default)
    {
        if (!actor.May(Right.RegisterSamples) && !actor.May(Right.ManageBatches))
            return Answer<Guid>.Forbidden("Recording tank movements is for the analyst, shift chemist, blending engineer or quality manager.");
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var earlier = await EarlierCommand.FindAsync(context, request.CommandId, CommandName, cancel);
        if (earlier.IsOther)
            return Answer<Guid>.Conflict(EarlierCommand.Taken);
        if (earlier.Subject is { } known)
            return Answer<Guid>.Repeated(Guid.Parse(known));
        var now = clock.GetUtcNow();
        var problems = new List<Problem>();
        if (!await context.Tanks.AnyAsync(t => t.Code == request.Tank, cancel))
            problems.Add(new Problem("/tank", $"There is no tank \"{request.Tank}\"."));
        if (request.At > now.AddMinutes(5))
            problems.Add(new Problem("/at", "A movement is recorded once it began."));
        if (request.CubicMetres is < 0 or > 1_000_000m)
            problems.Add(new Problem("/cubicMetres", "A volume is 0 to 1,000,000 m³."));
        if (problems.Count > 0)
            return Answer<Guid>.Invalid(problems);

        var movement = new TankMovement
        {
            Id = Guid.CreateVersion7(now),
            TankCode = request.Tank,
            Kind = request.Kind,
            At = request.At,
            CubicMetres = request.CubicMetres,
            Note = request.Note,
            RecordedBy = actor.Id,
            RecordedAt = now,
        };
        context.TankMovements.Add(movement);
        context.Commands.Add(new PerformedCommand { Id = request.CommandId, Name = CommandName, Subject = movement.Id.ToString(), At = now });
        context.Act = actor.Does("record tank movement", request.Note);
        await context.SaveChangesAsync(cancel);
        if (movement.ChangesContents)
            await MarkAsync(context, movement, now, cancel);
        await transaction.CommitAsync(cancel);
        return Answer<Guid>.Done(movement.Id);
    }

    // A movement entered late may lie between the sampling and the decision that rests on it.
    private static async Task MarkAsync(LabContext context, TankMovement movement, DateTimeOffset now, CancellationToken cancel)
    {
        var batches = await context.Samples
            .Where(s => s.SampledAt < movement.At && s.BatchId != null)
            .Join(context.Batches, s => s.BatchId, b => b.Id, (s, b) => new { Tank = s.TankCode ?? b.TankCode, b.Id })
            .Where(x => x.Tank == movement.TankCode && context.Decisions.Any(d => d.BatchId == x.Id && d.At >= movement.At))
            .Select(x => x.Id).Distinct().ToListAsync(cancel);
        await ReviewMarks.MarkAsync(
            context, batches, $"{MovementVoidsSample.Word(movement.Kind)} in tank {movement.TankCode} was recorded after the decision", now, cancel);
    }
}
