using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Bench;

/// <summary>Results as they stand now, the first recorded first, page by page.</summary>
public sealed class ReadResults(Func<LabContext> open)
{
    public const int PageSize = 500;

    /// <summary>The results wanted; null: all.</summary>
    /// <param name="From">First local day, or first moment, of measuring.</param>
    /// <param name="Until">Last local day, or last moment, of measuring.</param>
    public sealed record Wanted(string? Grade, string? Tank, string? Quantity, Bound? From, Bound? Until);

    /// <summary>A local day or a moment, both included.</summary>
    public sealed record Bound(DateOnly? Day, DateTimeOffset? Moment);

    /// <summary>Where a page ended.</summary>
    public sealed record Place(DateTimeOffset RecordedAt, Guid Determination);

    public sealed record Line(
        string Sample, string Grade, string? Tank, string? Batch, Guid Determination, string Method, string Edition, string Instrument,
        DateTimeOffset MeasuredAt, bool Counts, Result Result);

    /// <param name="Next">Where the next page begins; null on the last one.</param>
    public sealed record Page(IReadOnlyList<Line> Lines, Place? Next);

    public Task<Page> Run(Wanted wanted, Place? after, CancellationToken cancel = default) => Run(wanted, after, PageSize, cancel);

    internal async Task<Page> Run(Wanted wanted, Place? after, int size, CancellationToken cancel)
    {
        await using var context = open();
        var time = LaboratoryTime.Of(await SettingsInForce.LoadAsync(context, cancel));
        var rows = await Narrow(context, wanted, after, time)
            .OrderBy(d => d.RecordedAt).ThenBy(d => d.Id).Take(size)
            .Select(d => new { d.Id, d.SampleId, d.RecordedAt }).ToListAsync(cancel);
        var samples = await SamplesAsync(context, [.. rows.Select(r => r.SampleId).Distinct()], cancel);
        var states = (await DeterminationStates.LoadAsync(context, [.. samples.Keys], cancel)).ToDictionary(s => s.Id);
        var lines = rows.SelectMany(r => states[r.Id].Results
            .Where(result => wanted.Quantity is null || result.Quantity == wanted.Quantity)
            .Select(result => LineOf(samples[r.SampleId], states[r.Id], result))).ToList();
        return new Page(lines, rows.Count == size ? new Place(rows[^1].RecordedAt, rows[^1].Id) : null);
    }

    private static IQueryable<Determination> Narrow(LabContext context, Wanted wanted, Place? after, LaboratoryTime time)
    {
        var found = context.Determinations.AsNoTracking();
        if (wanted.Grade is { } grade)
            found = found.Where(d => context.Samples.Any(s => s.Id == d.SampleId && s.GradeCode == grade));
        if (wanted.Tank is { } tank)
            found = found.Where(d => context.Samples.Any(s => s.Id == d.SampleId && s.TankCode == tank));
        if (wanted.Quantity is { } quantity)
            found = found.Where(d => d.Results.Any(r => r.Quantity == quantity));
        if (wanted.From is { } from)
        {
            var first = from.Moment?.ToUniversalTime() ?? Midnight(time, from.Day!.Value);
            found = found.Where(d => d.MeasuredAt >= first);
        }

        if (wanted.Until is { } until)
        {
            var end = until.Moment?.ToUniversalTime() ?? Midnight(time, until.Day!.Value.AddDays(1)).AddMicroseconds(-1);
            found = found.Where(d => d.MeasuredAt <= end);
        }

        if (after is { } place)
            found = found.Where(d => d.RecordedAt > place.RecordedAt || (d.RecordedAt == place.RecordedAt && d.Id.CompareTo(place.Determination) > 0));
        return found;
    }

    // Where the clock skips midnight the day begins an hour later.
    private static DateTimeOffset Midnight(LaboratoryTime time, DateOnly day)
    {
        var local = day.ToDateTime(TimeOnly.MinValue);
        return time.Instant(local) ?? time.Instant(local.AddHours(1)) ?? new DateTimeOffset(local, TimeSpan.Zero);
    }

    private static async Task<Dictionary<Guid, SampleFacts>> SamplesAsync(LabContext context, IReadOnlyList<Guid> ids, CancellationToken cancel) =>
        await context.Samples.AsNoTracking().Where(s => ids.Contains(s.Id))
            .Select(s => new SampleFacts(
                s.Id, s.Number, s.GradeCode, s.TankCode, context.Batches.Where(b => b.Id == s.BatchId).Select(b => b.Number).FirstOrDefault()))
            .ToDictionaryAsync(s => s.Id, cancel);

    private static Line LineOf(SampleFacts sample, DeterminationState state, Result result) => new(
        sample.Number, sample.Grade, sample.Tank, sample.Batch, state.Id, state.Method, state.Edition, state.Instrument, state.MeasuredAt,
        state.DoesNotCount is null, result);

    private sealed record SampleFacts(Guid Id, string Number, string Grade, string? Tank, string? Batch);
}
