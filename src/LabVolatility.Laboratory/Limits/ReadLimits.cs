using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Limits;

/// <summary>Reads all areas with their limits, the grades to ask about, and the drafts that wait.</summary>
public sealed class ReadLimits(Func<LabContext> open)
{
    public async Task<LimitsSheet> Run(CancellationToken cancel = default)
    {
        await using var context = open();
        var catalogue = await LimitCatalogue.LoadAsync(context, cancel);
        var grades = await context.Grades.AsNoTracking().Where(g => g.Active).OrderBy(g => g.Code).ToListAsync(cancel);
        var areas = await context.LaboratoryAreas.AsNoTracking().Where(a => a.ApprovedAt == null && a.WithdrawnAt == null)
            .Join(context.People, a => a.DraftedBy, p => p.Id, (a, p) => new LimitDraft(null, a.Code, p.FullName, a.DraftedAt))
            .ToListAsync(cancel);
        var limits = await context.LaboratoryLimits.AsNoTracking().Where(l => l.ApprovedAt == null && l.WithdrawnAt == null)
            .Join(context.People, l => l.DraftedBy, p => p.Id, (l, p) => new LimitDraft(l.Key, l.AreaCode, p.FullName, l.DraftedAt))
            .ToListAsync(cancel);
        return new LimitsSheet(catalogue, grades, [.. areas.Concat(limits).OrderBy(d => d.At)]);
    }
}
