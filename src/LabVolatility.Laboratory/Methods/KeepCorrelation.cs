using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Methods;

/// <summary>A correlation from the laboratory's own copy: drafted by one quality manager, approved by another person.</summary>
/// <remarks>A result keeps the correlation that it was worked out by: what is approved or withdrawn later does not move it.</remarks>
public sealed class KeepCorrelation(Func<LabContext> open, TimeProvider clock)
{
    /// <summary>Drafts a correlation. It does not count before it is approved.</summary>
    public async Task<Answer<Guid>> Draft(Actor actor, CorrelationEntry draft, CancellationToken cancel = default)
    {
        if (actor.Lacks(Right.ManageReferenceData, "Entering correlations") is { } lacking)
            return Answer<Guid>.Forbidden(lacking);
        if (CorrelationProblems.Of(draft) is { Count: > 0 } problems)
            return Answer<Guid>.Invalid(problems);
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var now = clock.GetUtcNow();
        var entry = new CorrelationEntry
        {
            Id = Guid.CreateVersion7(now),
            Number = checked((int)await context.NextAsync("own correlation", cancel)),
            Method = draft.Method,
            TotalSlope = draft.TotalSlope,
            GasSlope = draft.GasSlope,
            Constant = draft.Constant,
            Unit = draft.Unit,
            From = draft.From,
            Until = draft.Until,
            Source = draft.Source.Trim(),
            DraftedBy = actor.Id,
            DraftedAt = now,
        };
        context.CorrelationEntries.Add(entry);
        context.Act = actor.Does("draft correlation");
        await context.SaveChangesAsync(cancel);
        await transaction.CommitAsync(cancel);
        return Answer<Guid>.Done(entry.Id);
    }

    /// <summary>Approves a draft: another person than the one who drafted it.</summary>
    public Task<Answer<Guid>> Approve(Actor actor, Guid id, CancellationToken cancel = default) => ChangeAsync(actor, id, "approve correlation", null, (entry, now) =>
    {
        if (entry.ApprovedAt is not null || entry.WithdrawnAt is not null)
            return Answer<Guid>.Conflict("It was approved or withdrawn already.");
        if (entry.DraftedBy == actor.Id)
            return Answer<Guid>.Refused(new Problem("", "You drafted it: another quality manager approves it.", KeepPrecision.Rule));
        (entry.ApprovedBy, entry.ApprovedAt) = (actor.Id, now);
        return null;
    }, cancel);

    /// <summary>Takes a correlation out of force, or a draft back, with a reason. Results that it gave stay as they are.</summary>
    public Task<Answer<Guid>> Withdraw(Actor actor, Guid id, string? reason, CancellationToken cancel = default) =>
        string.IsNullOrWhiteSpace(reason)
            ? Task.FromResult(Answer<Guid>.Invalid(new Problem("/reason", "Say why.")))
            : ChangeAsync(actor, id, "withdraw correlation", reason.Trim(), (entry, now) =>
            {
                if (entry.WithdrawnAt is not null)
                    return Answer<Guid>.Conflict("It was withdrawn already.");
                entry.WithdrawnAt = now;
                return null;
            }, cancel);

    private async Task<Answer<Guid>> ChangeAsync(
        Actor actor, Guid id, string act, string? reason, Func<CorrelationEntry, DateTimeOffset, Answer<Guid>?> change, CancellationToken cancel)
    {
        if (actor.Lacks(Right.ManageReferenceData, "Keeping correlations") is { } lacking)
            return Answer<Guid>.Forbidden(lacking);
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var entry = await context.CorrelationEntries.FirstOrDefaultAsync(e => e.Id == id, cancel);
        if (entry is null)
            return Answer<Guid>.NotFound("There is no such correlation.");
        if (change(entry, clock.GetUtcNow()) is { } refusal)
            return refusal;
        context.Act = actor.Does(act, reason);
        await context.SaveChangesAsync(cancel);
        await transaction.CommitAsync(cancel);
        return Answer<Guid>.Done(id);
    }
}
