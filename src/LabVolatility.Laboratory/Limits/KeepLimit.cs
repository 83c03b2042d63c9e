using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Limits;

/// <summary>Limits of the laboratory's own: drafted by one quality manager, approved by another person, with the days they hold.</summary>
public sealed class KeepLimit(Func<LabContext> open, TimeProvider clock)
{
    public async Task<Answer<Guid>> Draft(Actor actor, LaboratoryLimit draft, CancellationToken cancel = default)
    {
        if (actor.Lacks(Right.ManageReferenceData, "Entering limits") is { } lacking)
            return Answer<Guid>.Forbidden(lacking);
        await using var context = open();
        var areas = await LimitCatalogue.LoadAsync(context, cancel);
        List<Problem> problems = [.. LimitProblems.Of(draft, areas)];
        if (await context.LaboratoryLimits.AnyAsync(l => l.Key == draft.Key.Trim() && l.AreaCode != draft.AreaCode && l.WithdrawnAt == null, cancel))
            problems.Add(new Problem("/key", $"{draft.Key.Trim()} is the name of a limit in another area: take another name."));
        if (problems.Count > 0)
            return Answer<Guid>.Invalid(problems);
        var now = clock.GetUtcNow();
        var limit = new LaboratoryLimit
        {
            Id = Guid.CreateVersion7(now),
            Key = draft.Key.Trim(),
            AreaCode = draft.AreaCode,
            GradeCode = draft.GradeCode,
            Point = draft.Point,
            Quantity = draft.Quantity,
            Correlation = draft.Correlation,
            Minimum = draft.Minimum,
            Maximum = draft.Maximum,
            Unit = draft.Unit,
            Digits = draft.Digits,
            Methods = draft.Methods,
            Standing = draft.Standing,
            Required = draft.Required,
            Source = draft.Source.Trim(),
            EffectiveFrom = draft.EffectiveFrom,
            EffectiveUntil = draft.EffectiveUntil,
            DraftedBy = actor.Id,
            DraftedAt = now,
        };
        context.LaboratoryLimits.Add(limit);
        context.Act = actor.Does("draft limit");
        await context.SaveChangesAsync(cancel);
        return Answer<Guid>.Done(limit.Id);
    }

    /// <summary>Approves a draft: another person than the one who drafted it. It takes the place of an earlier version under the same key on the days it holds.</summary>
    public async Task<Answer<Guid>> Approve(Actor actor, Guid id, CancellationToken cancel = default)
    {
        if (actor.Lacks(Right.ManageReferenceData, "Approving limits") is { } lacking)
            return Answer<Guid>.Forbidden(lacking);
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var limit = await context.LaboratoryLimits.FirstOrDefaultAsync(l => l.Id == id, cancel);
        if (limit is null)
            return Answer<Guid>.NotFound("There is no such limit.");
        if (limit.ApprovedAt is not null || limit.WithdrawnAt is not null)
            return Answer<Guid>.Conflict("It was approved or withdrawn already.");
        if (limit.DraftedBy == actor.Id)
            return Answer<Guid>.Refused(new Problem("", "You drafted it: another quality manager approves it.", KeepPrecision.Rule));
        var now = clock.GetUtcNow();
        // One that holds before the new one begins, or after it ends, stays in force on those days.
        foreach (var old in await context.LaboratoryLimits
            .Where(l => l.Key == limit.Key && l.ApprovedAt != null && l.WithdrawnAt == null).ToListAsync(cancel))
            old.WithdrawnAt = limit.Days.Covers(old.Days) ? now : null;
        limit.ApprovedBy = actor.Id;
        limit.ApprovedAt = now;
        context.Act = actor.Does("approve limit");
        await context.SaveChangesAsync(cancel);
        await ReferenceChange.MarkAsync(context, $"the limit {limit.Key} was changed", now, cancel);
        await transaction.CommitAsync(cancel);
        return Answer<Guid>.Done(id);
    }

    /// <summary>The laboratory read a shipped limit in its own copy: the flag "from memory" goes.</summary>
    public async Task<Answer<string>> Confirm(Actor actor, string key, string? source, CancellationToken cancel = default)
    {
        if (actor.Lacks(Right.ManageReferenceData, "Confirming limits") is { } lacking)
            return Answer<string>.Forbidden(lacking);
        if (string.IsNullOrWhiteSpace(source))
            return Answer<string>.Invalid(new Problem("/source", "Say in which copy it was read: designation, edition, clause."));
        if (Core.Limits.PublishedAreas.All.SelectMany(a => a.Limits).All(l => l.Limit.Key != key))
            return Answer<string>.NotFound($"No limit {key} ships.");
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        if (await context.FactConfirmations.AnyAsync(c => c.Key == key, cancel))
            return Answer<string>.Conflict("It was confirmed already.");
        var now = clock.GetUtcNow();
        context.FactConfirmations.Add(new FactConfirmation { Key = key, ConfirmedBy = actor.Id, ConfirmedAt = now, Source = source.Trim() });
        context.Act = actor.Does("confirm limit", source.Trim());
        await context.SaveChangesAsync(cancel);
        await ReferenceChange.MarkAsync(context, $"the limit {key} was confirmed", now, cancel);
        await transaction.CommitAsync(cancel);
        return Answer<string>.Done(key);
    }
}
