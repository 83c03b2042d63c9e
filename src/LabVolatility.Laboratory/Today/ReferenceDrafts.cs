using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Limits;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Today;

/// <summary>Loads the drafts of reference data, and counts what is still from memory.</summary>
internal static class ReferenceDrafts
{
    public static async Task<ReferenceWork> LoadAsync(LabContext context, Guid person, CancellationToken cancel)
    {
        var limits = await context.LaboratoryLimits.AsNoTracking().Where(l => l.ApprovedAt == null && l.WithdrawnAt == null)
            .Join(context.People, l => l.DraftedBy, p => p.Id, (l, p) => new ReferenceDraft("limit", l.Key, l.AreaCode, p.FullName, l.DraftedAt, p.Id == person))
            .ToListAsync(cancel);
        var areas = await context.LaboratoryAreas.AsNoTracking().Where(a => a.ApprovedAt == null && a.WithdrawnAt == null)
            .Join(context.People, a => a.DraftedBy, p => p.Id, (a, p) => new ReferenceDraft("area", a.Code, a.Code, p.FullName, a.DraftedAt, p.Id == person))
            .ToListAsync(cancel);
        var precision = await context.PrecisionEntries.AsNoTracking().Where(e => e.ApprovedAt == null && e.WithdrawnAt == null)
            .Join(context.People, e => e.DraftedBy, p => p.Id, (e, p) => new ReferenceDraft("precision", e.Method + ", " + e.Quantity, e.Method, p.FullName, e.DraftedAt, p.Id == person))
            .ToListAsync(cancel);
        var catalogue = await LimitCatalogue.LoadAsync(context, cancel);
        var fromMemory = catalogue.SelectMany(a => a.Limits).Where(l => l.Limit.Status == FactStatus.FromMemory).Select(l => l.Limit.Key).Distinct().Count();
        return new ReferenceWork([.. limits.Concat(areas).Concat(precision).OrderBy(d => d.At)], fromMemory);
    }
}
