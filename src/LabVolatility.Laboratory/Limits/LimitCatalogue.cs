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

    internal static Task<IReadOnlyList<Area>> LoadAsync(LabContext context, CancellationToken cancel) =>
        context.Read.GetAsync(() => FetchAsync(context, cancel));

    private static async Task<IReadOnlyList<Area>> FetchAsync(LabContext context, CancellationToken cancel)
    {
        var confirmed = await context.FactConfirmations.AsNoTracking().Select(c => c.Key).ToHashSetAsync(cancel);
        var areas = await context.LaboratoryAreas.AsNoTracking()
            .Where(a => a.ApprovedAt != null && a.WithdrawnAt == null).OrderBy(a => a.ApprovedAt).ThenBy(a => a.Id).ToListAsync(cancel);
        var limits = await context.LaboratoryLimits.AsNoTracking()
            .Where(l => l.ApprovedAt != null && l.WithdrawnAt == null).OrderBy(l => l.ApprovedAt).ThenBy(l => l.Id).ToListAsync(cancel);
        var shipped = PublishedAreas.All.Select(a => a with { Limits = [.. a.Limits.Select(l => Confirm(l, confirmed))] });
        var own = Versions(areas, a => a.Code, a => a.Days).Select(v => AreaOf(v.Version, v.Days));
        List<(LaboratoryLimit Version, EffectiveDays Days)> ownLimits = [.. Versions(limits, l => l.Key, l => l.Days)];
        return [.. shipped.Concat(own).Select(a => WithOwn(a, ownLimits))];
    }

    private static AreaLimit Confirm(AreaLimit limit, HashSet<string> confirmed) =>
        confirmed.Contains(limit.Limit.Key) ? limit with { Limit = limit.Limit with { Status = FactStatus.Laboratory } } : limit;

    // Of several versions the one approved last holds on its days, an earlier one on what is left of its own.
    private static IEnumerable<(T Version, EffectiveDays Days)> Versions<T>(
        IReadOnlyList<T> approved, Func<T, string> name, Func<T, EffectiveDays> daysOf) =>
        approved.SelectMany((version, i) => approved.Skip(i + 1).Where(later => name(later) == name(version))
            .Aggregate<T, IEnumerable<EffectiveDays>>([daysOf(version)], (left, later) => left.SelectMany(days => days.Without(daysOf(later))))
            .Select(days => (version, days)));

    private static Area AreaOf(LaboratoryArea area, EffectiveDays days) =>
        new(area.Code, area.Name, area.Derogation, area.Calendar, [], area.Source, FactStatus.Laboratory, null)
        {
            EffectiveFrom = days.From,
            EffectiveUntil = days.Until,
        };

    private static Area WithOwn(Area area, List<(LaboratoryLimit Version, EffectiveDays Days)> limits)
    {
        var own = limits.Where(l => l.Version.AreaCode == area.Code).OrderBy(l => l.Version.Key, StringComparer.Ordinal).ThenBy(l => l.Days.From)
            .Select(l => new AreaLimit(LimitOf(l.Version, l.Days), l.Version.GradeCode, l.Version.Point)).ToList();
        return own.Count == 0 ? area : area with { Limits = [.. area.Limits, .. own] };
    }

    private static Limit LimitOf(LaboratoryLimit limit, EffectiveDays days) => new(
        limit.Key, limit.Quantity, limit.Correlation, limit.Minimum, limit.Maximum, limit.Unit, limit.Digits, limit.Methods, null,
        new NoAllowance(), limit.Standing, limit.Source, FactStatus.Laboratory, days.From, days.Until,
        limit.Required, null);
}
