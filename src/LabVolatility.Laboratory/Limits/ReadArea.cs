using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Limits;

/// <summary>Reads one area: what counts now, and every version the laboratory ever drafted.</summary>
public sealed class ReadArea(Func<LabContext> open)
{
    /// <summary>Null where neither the program nor the laboratory knows an area of that code.</summary>
    public async Task<AreaSheet?> Run(string code, CancellationToken cancel = default)
    {
        await using var context = open();
        var areas = await LimitCatalogue.LoadAsync(context, cancel);
        var versions = await context.LaboratoryAreas.AsNoTracking().Where(a => a.Code == code).OrderByDescending(a => a.DraftedAt)
            .Select(a => new AreaVersion(
                a,
                context.People.Where(p => p.Id == a.DraftedBy).Select(p => p.FullName).First(),
                context.People.Where(p => p.Id == a.ApprovedBy).Select(p => p.FullName).FirstOrDefault()))
            .ToListAsync(cancel);
        if (versions.Count == 0 && areas.All(a => a.Code != code))
            return null;
        var limits = await context.LaboratoryLimits.AsNoTracking().Where(l => l.AreaCode == code)
            .OrderBy(l => l.Key).ThenByDescending(l => l.DraftedAt)
            .Select(l => new LimitVersion(
                l,
                context.People.Where(p => p.Id == l.DraftedBy).Select(p => p.FullName).First(),
                context.People.Where(p => p.Id == l.ApprovedBy).Select(p => p.FullName).FirstOrDefault()))
            .ToListAsync(cancel);
        var shipped = PublishedAreas.All.Where(a => a.Code == code).SelectMany(a => a.Limits).Select(l => l.Limit.Key).ToList();
        var confirmed = await context.FactConfirmations.AsNoTracking().Where(c => shipped.Contains(c.Key))
            .Join(context.People, c => c.ConfirmedBy, p => p.Id, (c, p) => new ConfirmedFact(c.Key, p.FullName, c.ConfirmedAt, c.Source))
            .ToListAsync(cancel);
        var grades = await context.Grades.AsNoTracking().Where(g => g.Active).OrderBy(g => g.Code).Select(g => g.Code).ToListAsync(cancel);
        return new AreaSheet(code, areas, versions, limits, confirmed, grades);
    }
}
