using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Today;

/// <summary>Reads what waits for a person, by the roles held now.</summary>
public sealed class ReadToday(Func<LabContext> open, TimeProvider clock)
{
    public async Task<TodaySheet> Run(Actor actor, CancellationToken cancel = default)
    {
        await using var context = open();
        var settings = await SettingsInForce.LoadAsync(context, cancel);
        var now = clock.GetUtcNow();
        var shift = Shift.Since(settings, now);
        var decides = actor.May(Right.Decide);
        var blends = Holds(Roles.BlendingEngineer);
        return new TodaySheet
        {
            ShiftSince = shift,
            Bench = actor.May(Right.Determine) ? await ReadBench.LoadAsync(context, actor.Id, now, cancel) : null,
            Waiting = decides ? await WaitingBatches.LoadAsync(context, now, cancel) : null,
            HandedOver = decides ? await OpenHandovers.LoadAsync(context, cancel) : null,
            ForReview = decides || Holds(Roles.Auditor) ? await MarkedDecisions.LoadAsync(context, cancel) : null,
            Margins = blends ? await BatchMargins.LoadAsync(context, cancel) : null,
            Seasons = blends || decides ? await SeasonChanges.LoadAsync(context, now, cancel) : null,
            Reference = actor.May(Right.ManageReferenceData) ? await ReferenceDrafts.LoadAsync(context, actor.Id, cancel) : null,
            Accounts = Holds(Roles.Administrator) ? await AccountsToday.LoadAsync(context, now, cancel) : null,
            Trail = Holds(Roles.Auditor) ? await TrailAsync(context, shift, cancel) : null,
            Decisions = await DecisionsAsync(context, shift, cancel),
        };

        bool Holds(Roles role) => (actor.Roles & role) != Roles.None;
    }

    // The sequence has no gap: the last one counts them all.
    private static async Task<TrailHead> TrailAsync(LabContext context, DateTimeOffset since, CancellationToken cancel)
    {
        var last = await context.AuditRecords.AsNoTracking().OrderByDescending(r => r.Sequence).Select(r => new { r.Sequence, r.At }).FirstOrDefaultAsync(cancel);
        return new TrailHead(last?.Sequence ?? 0, last?.At, await context.AuditRecords.CountAsync(r => r.At >= since, cancel));
    }

    private static async Task<IReadOnlyList<ShiftDecision>> DecisionsAsync(LabContext context, DateTimeOffset since, CancellationToken cancel) =>
        await context.Decisions.AsNoTracking().Where(d => d.At >= since).OrderByDescending(d => d.At)
            .Join(context.Batches, d => d.BatchId, b => b.Id, (d, b) => new ShiftDecision(b.Number, d.Kind, d.PersonName, d.At, d.Reason))
            .ToListAsync(cancel);
}
