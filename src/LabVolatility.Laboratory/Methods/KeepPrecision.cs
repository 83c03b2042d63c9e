using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Methods;

/// <summary>r and R from the laboratory's own copy: drafted by one quality manager, approved by another person.</summary>
public sealed class KeepPrecision(Func<LabContext> open, TimeProvider clock)
{
    public const string Rule = "reference-data-needs-two-people";

    /// <summary>Drafts an entry. It does not count before it is approved.</summary>
    public async Task<Answer<Guid>> Draft(Actor actor, PrecisionEntry draft, CancellationToken cancel = default)
    {
        if (actor.Lacks(Right.ManageReferenceData, "Entering precision") is { } lacking)
            return Answer<Guid>.Forbidden(lacking);
        if (PrecisionProblems.Of(draft) is { Count: > 0 } problems)
            return Answer<Guid>.Invalid(problems);
        await using var context = open();
        var now = clock.GetUtcNow();
        var entry = new PrecisionEntry
        {
            Id = Guid.CreateVersion7(now),
            Method = draft.Method,
            Edition = draft.Edition,
            Quantity = draft.Quantity,
            Container = draft.Container,
            ContainerMillilitres = draft.ContainerMillilitres,
            LowKpa = draft.LowKpa,
            HighKpa = draft.HighKpa,
            Unit = draft.Unit,
            RepeatabilityConstant = draft.RepeatabilityConstant,
            RepeatabilitySlope = draft.RepeatabilitySlope,
            ReproducibilityConstant = draft.ReproducibilityConstant,
            ReproducibilitySlope = draft.ReproducibilitySlope,
            Source = draft.Source.Trim(),
            DraftedBy = actor.Id,
            DraftedAt = now,
        };
        context.PrecisionEntries.Add(entry);
        context.Act = actor.Does("draft precision");
        await context.SaveChangesAsync(cancel);
        return Answer<Guid>.Done(entry.Id);
    }

    /// <summary>Approves a draft: another person than the one who drafted it. An earlier entry for the same container is withdrawn.</summary>
    public async Task<Answer<Guid>> Approve(Actor actor, Guid id, CancellationToken cancel = default)
    {
        if (actor.Lacks(Right.ManageReferenceData, "Approving precision") is { } lacking)
            return Answer<Guid>.Forbidden(lacking);
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var entry = await context.PrecisionEntries.FirstOrDefaultAsync(p => p.Id == id, cancel);
        if (entry is null)
            return Answer<Guid>.NotFound("There is no such entry.");
        if (entry.ApprovedAt is not null || entry.WithdrawnAt is not null)
            return Answer<Guid>.Conflict("It was approved or withdrawn already.");
        if (entry.DraftedBy == actor.Id)
            return Answer<Guid>.Refused(new Problem("", "You drafted it: another quality manager approves it.", Rule));
        var now = clock.GetUtcNow();
        var earlier = await context.PrecisionEntries.Where(p =>
            p.Method == entry.Method && p.Edition == entry.Edition && p.Quantity == entry.Quantity && p.Container == entry.Container
            && p.ContainerMillilitres == entry.ContainerMillilitres && p.Unit == entry.Unit && p.LowKpa == entry.LowKpa
            && p.HighKpa == entry.HighKpa && p.ApprovedAt != null && p.WithdrawnAt == null).ToListAsync(cancel);
        foreach (var old in earlier)
            old.WithdrawnAt = now;
        entry.ApprovedBy = actor.Id;
        entry.ApprovedAt = now;
        context.Act = actor.Does("approve precision");
        await context.SaveChangesAsync(cancel);
        await ReferenceChange.MarkAsync(context, $"precision of {entry.Method} was changed", now, cancel);
        await transaction.CommitAsync(cancel);
        return Answer<Guid>.Done(id);
    }

    /// <summary>Takes an entry out of force, or a draft back, with a reason.</summary>
    public async Task<Answer<Guid>> Withdraw(Actor actor, Guid id, string? reason, CancellationToken cancel = default)
    {
        if (actor.Lacks(Right.ManageReferenceData, "Withdrawing precision") is { } lacking)
            return Answer<Guid>.Forbidden(lacking);
        if (string.IsNullOrWhiteSpace(reason))
            return Answer<Guid>.Invalid(new Problem("/reason", "Say why."));
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var entry = await context.PrecisionEntries.FirstOrDefaultAsync(p => p.Id == id, cancel);
        if (entry is null)
            return Answer<Guid>.NotFound("There is no such entry.");
        if (entry.WithdrawnAt is not null)
            return Answer<Guid>.Conflict("It was withdrawn already.");
        var now = clock.GetUtcNow();
        entry.WithdrawnAt = now;
        context.Act = actor.Does("withdraw precision", reason.Trim());
        await context.SaveChangesAsync(cancel);
        await ReferenceChange.MarkAsync(context, $"precision of {entry.Method} was withdrawn", now, cancel);
        await transaction.CommitAsync(cancel);
        return Answer<Guid>.Done(id);
    }
}
