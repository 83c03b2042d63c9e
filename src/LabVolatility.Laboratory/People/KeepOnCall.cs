using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.People;

/// <summary>Keeps the list of who can be called to sign; whoever decides on batches keeps it.</summary>
public sealed class KeepOnCall(Func<LabContext> open, TimeProvider clock)
{
    private const int LongestDays = 31;

    /// <param name="Person">Somebody who may sign decisions.</param>
    /// <param name="Phone">How to reach them.</param>
    /// <param name="From">When the turn begins.</param>
    /// <param name="Until">When it ends.</param>
    public sealed record Turn(Guid Person, string? Phone, DateTimeOffset? From, DateTimeOffset? Until);

    public async Task<Answer<Guid>> Add(Actor actor, Turn request, CancellationToken cancel = default)
    {
        if (Lacking(actor) is { } lacking)
            return Answer<Guid>.Forbidden(lacking);
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var now = clock.GetUtcNow();
        if (await ProblemsAsync(context, request, now, cancel) is { Count: > 0 } problems)
            return Answer<Guid>.Invalid(problems);
        var turn = new OnCallTurn
        {
            Id = Guid.CreateVersion7(now),
            PersonId = request.Person,
            Phone = request.Phone!.Trim(),
            From = request.From!.Value,
            Until = request.Until!.Value,
            EnteredAt = now,
            EnteredBy = actor.Id,
        };
        context.OnCallTurns.Add(turn);
        context.Act = actor.Does("put on call");
        await context.SaveChangesAsync(cancel);
        await transaction.CommitAsync(cancel);
        return Answer<Guid>.Done(turn.Id);
    }

    /// <summary>Ends a turn now; one that has not begun never will.</summary>
    public async Task<Answer<Guid>> End(Actor actor, Guid id, CancellationToken cancel = default)
    {
        if (Lacking(actor) is { } lacking)
            return Answer<Guid>.Forbidden(lacking);
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var turn = await context.OnCallTurns.FirstOrDefaultAsync(t => t.Id == id, cancel);
        if (turn is null)
            return Answer<Guid>.NotFound("There is no such turn.");
        var now = clock.GetUtcNow();
        if (turn.Until <= now)
            return Answer<Guid>.Repeated(id);
        turn.Until = now > turn.From ? now : turn.From;
        turn.Version = Guid.NewGuid();
        context.Act = actor.Does("end a turn on call");
        await context.SaveChangesAsync(cancel);
        await transaction.CommitAsync(cancel);
        return Answer<Guid>.Done(id);
    }

    private static string? Lacking(Actor actor) =>
        actor.IsKey ? "No key keeps the list of who is on call." : actor.Lacks(Right.Decide, "Keeping the list of who is on call");

    private static async Task<List<Problem>> ProblemsAsync(LabContext context, Turn turn, DateTimeOffset now, CancellationToken cancel)
    {
        var problems = new List<Problem>();
        var person = await context.People.AsNoTracking().FirstOrDefaultAsync(p => p.Id == turn.Person && p.Active && !p.IsService, cancel);
        if (person is null || !Rights.Allow(person.Roles, Right.Decide))
            problems.Add(new Problem("/person", $"Pick somebody who may sign: a {Rights.HoldersText(Right.Decide)}."));
        if (string.IsNullOrWhiteSpace(turn.Phone))
            problems.Add(new Problem("/phone", "Say how to reach them: a telephone number."));
        else if (turn.Phone.Trim().Length > Lengths.Name)
            problems.Add(new Problem("/phone", $"It has at most {Lengths.Name} characters."));
        if (turn.From is null)
            problems.Add(new Problem("/from", "Say when the turn begins."));
        if (turn.Until is not { } until || until <= now || until <= turn.From)
            problems.Add(new Problem("/until", "A turn ends after it begins, and not in the past."));
        else if (turn.From is { } from && until - from > TimeSpan.FromDays(LongestDays))
            problems.Add(new Problem("/until", $"A turn lasts at most {LongestDays} days: a list that nobody renews is not to be trusted at night."));
        return problems;
    }
}
