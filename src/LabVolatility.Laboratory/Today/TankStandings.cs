using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Today;

/// <summary>Holds the last batch of each tank against the limits that come next at its destinations.</summary>
internal static class TankStandings
{
    // A tank that took no batch for so long says nothing about the next season.
    private static readonly TimeSpan Recent = TimeSpan.FromDays(60);

    /// <summary>The standings by destination; a tank stands under the change that comes first for it.</summary>
    public static async Task<ILookup<Destination, TankStanding>> LoadAsync(
        LabContext context, IReadOnlyList<SeasonChange> changes, DateTimeOffset now, CancellationToken cancel)
    {
        var since = now - Recent;
        var newest = await context.Batches.AsNoTracking()
            .Where(b => b.CreatedAt >= since && b.TankCode != null && !context.Batches.Any(l => l.TankCode == b.TankCode && l.CreatedAt > b.CreatedAt))
            .ToListAsync(cancel);
        var next = newest.Select(b => (Batch: b, Change: Next(changes, b))).Where(x => x.Change is not null).ToDictionary(x => x.Batch.Id, x => x.Change!);
        var evidence = await BatchAssessing.WorkOutAllAsync(context, [.. next.Keys], batch => SendOn(batch, next[batch.Id]), cancel);
        return next.Select(x => (To: new Destination(x.Value.Area, x.Value.Point), Standing: Of(evidence[x.Key])))
            .OrderBy(x => x.Standing.IsFit).ThenBy(x => x.Standing.Tank, StringComparer.Ordinal).ToLookup(x => x.To, x => x.Standing);
    }

    private static void SendOn(Batch batch, SeasonChange change)
    {
        batch.Destinations = [new Destination(change.Area, change.Point)];
        (batch.From, batch.Until) = (change.On, change.On);
    }

    private static SeasonChange? Next(IReadOnlyList<SeasonChange> changes, Batch batch) =>
        changes.Where(c => batch.Destinations.Contains(new Destination(c.Area, c.Point))).MinBy(c => c.On);

    private static TankStanding Of(Evidence evidence) =>
        new(evidence.Tank!, evidence.Grade, evidence.Batch, evidence.Outcome, BindingLimit.Of(evidence));
}
