using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Limits;

/// <summary>All areas and limits that count now: those that ship, with the laboratory's confirmations, and its own approved ones.</summary>
public sealed class LimitCatalogue(Func<LabContext> open)
{
    public async Task<IReadOnlyList<Area>> Run(CancellationToken cancel = default)
    {
        await using var context = open();
        return await LoadAsync(context, cancel);
    }

    internal static async Task<IReadOnlyList<Area>> LoadAsync(LabContext context, CancellationToken cancel)
    {
        var confirmed = await context.FactConfirmations.AsNoTracking().Select(c => c.Key).ToHashSetAsync(cancel);
        var areas = await context.LaboratoryAreas.AsNoTracking()
            .Where(a => a.ApprovedAt != null && a.WithdrawnAt == null).OrderBy(a => a.ApprovedAt).ToListAsync(cancel);
        var limits = await context.LaboratoryLimits.AsNoTracking()
            .Where(l => l.ApprovedAt != null && l.WithdrawnAt == null).OrderBy(l => l.ApprovedAt).ToListAsync(cancel);
        var shipped = PublishedAreas.All.Select(a => a with { Limits = [.. a.Limits.Select(l => Confirm(l, confirmed))] });
        return [.. shipped.Concat(areas.Select(AreaOf)).Select(a => WithOwn(a, limits))];
    }

    private static AreaLimit Confirm(AreaLimit limit, HashSet<string> confirmed) =>
        confirmed.Contains(limit.Limit.Key) ? limit with { Limit = limit.Limit with { Status = FactStatus.Laboratory } } : limit;

    private static Area AreaOf(LaboratoryArea area) =>
        new(area.Code, area.Name, area.Derogation, area.Calendar, [], area.Source, FactStatus.Laboratory, null);

    private static Area WithOwn(Area area, List<LaboratoryLimit> limits)
    {
        var own = limits.Where(l => l.AreaCode == area.Code).Select(l => new AreaLimit(LimitOf(l), l.GradeCode, l.Point)).ToList();
        return own.Count == 0 ? area : area with { Limits = [.. area.Limits, .. own] };
    }

    private static Limit LimitOf(LaboratoryLimit limit) => new(
        limit.Key, limit.Quantity, limit.Correlation, limit.Minimum, limit.Maximum, limit.Unit, limit.Digits, limit.Methods, null,
        new NoAllowance(), limit.Standing, limit.Source, FactStatus.Laboratory, limit.EffectiveFrom, limit.EffectiveUntil,
        limit.Required, null);
}
