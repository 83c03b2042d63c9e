using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Limits;

/// <summary>Areas of the laboratory's own: a calendar of classes, drafted by one quality manager, approved by another person.</summary>
public sealed class KeepArea(Func<LabContext> open, TimeProvider clock)
{
    public async Task<Answer<Guid>> Draft(Actor actor, LaboratoryArea draft, CancellationToken cancel = default)
    {
        if (actor.Lacks(Right.ManageReferenceData, "Entering areas") is { } lacking)
            return Answer<Guid>.Forbidden(lacking);
        if (AreaProblems.Of(draft) is { Count: > 0 } problems)
            return Answer<Guid>.Invalid(problems);
        await using var context = open();
        var now = clock.GetUtcNow();
        var area = new LaboratoryArea
        {
            Id = Guid.CreateVersion7(now),
            Code = draft.Code.Trim(),
            Name = draft.Name.Trim(),
            Derogation = draft.Derogation,
            Calendar = draft.Calendar,
            Source = draft.Source.Trim(),
            EffectiveFrom = draft.EffectiveFrom,
            EffectiveUntil = draft.EffectiveUntil,
            DraftedBy = actor.Id,
            DraftedAt = now,
        };
        context.LaboratoryAreas.Add(area);
        context.Act = actor.Does("draft area");
        await context.SaveChangesAsync(cancel);
        return Answer<Guid>.Done(area.Id);
    }

    /// <summary>Approves a draft: another person than the one who drafted it. It takes the place of an earlier version on the days it holds.</summary>
    public async Task<Answer<Guid>> Approve(Actor actor, Guid id, CancellationToken cancel = default)
    {
        if (actor.Lacks(Right.ManageReferenceData, "Approving areas") is { } lacking)
            return Answer<Guid>.Forbidden(lacking);
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var area = await context.LaboratoryAreas.FirstOrDefaultAsync(a => a.Id == id, cancel);
        if (area is null)
            return Answer<Guid>.NotFound("There is no such area.");
        if (area.ApprovedAt is not null || area.WithdrawnAt is not null)
            return Answer<Guid>.Conflict("It was approved or withdrawn already.");
        if (area.DraftedBy == actor.Id)
            return Answer<Guid>.Refused(new Problem("", "You drafted it: another quality manager approves it.", KeepPrecision.Rule));
        var now = clock.GetUtcNow();
        foreach (var old in await context.LaboratoryAreas
            .Where(a => a.Code == area.Code && a.ApprovedAt != null && a.WithdrawnAt == null).ToListAsync(cancel))
            old.WithdrawnAt = area.Days.Covers(old.Days) ? now : null;
        area.ApprovedBy = actor.Id;
        area.ApprovedAt = now;
        context.Act = actor.Does("approve area");
        await context.SaveChangesAsync(cancel);
        await ReferenceChange.MarkAsync(context, $"the calendar of {area.Code} was changed", now, cancel);
        await transaction.CommitAsync(cancel);
        return Answer<Guid>.Done(id);
    }
}
