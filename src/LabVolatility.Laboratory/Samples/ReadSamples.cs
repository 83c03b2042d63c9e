using System.Diagnostics.CodeAnalysis;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Samples;

/// <summary>Lists samples, a page at a time.</summary>
[SuppressMessage("Globalization", "CA1309", Justification = "string.Compare is translated: the database compares as it orders.")]
public sealed class ReadSamples(Func<LabContext> open)
{
    public const int PageSize = 50;

    public async Task<SamplesPage> Run(SamplesFilter filter, CancellationToken cancel = default)
    {
        await using var context = open();
        var chosen = Where(context, filter);
        var keys = filter.ByDeadline ? await ByDeadlineAsync(chosen, filter.After, cancel) : await NewestAsync(chosen, filter.After, cancel);
        var page = keys.Take(PageSize).ToList();
        var numbers = page.Select(k => k.Number).ToList();
        var samples = await context.Samples.AsNoTracking().Where(s => numbers.Contains(s.Number))
            .Include(s => s.Tests).Include(s => s.Containers).ThenInclude(c => c.Openings).AsSplitQuery()
            .ToDictionaryAsync(s => s.Number, cancel);
        var batchIds = samples.Values.Select(s => s.BatchId).OfType<Guid>().Distinct().ToList();
        var batches = await context.Batches.AsNoTracking().Where(b => batchIds.Contains(b.Id))
            .Select(b => new { b.Id, b.Number, b.TankCode }).ToDictionaryAsync(b => b.Id, b => new BatchChoice(b.Number, "", b.TankCode), cancel);
        var tanks = samples.Values.Select(s => s.TankCode ?? TankOf(s, batches)).OfType<string>().Distinct().ToList();
        var since = samples.Count == 0 ? DateTimeOffset.MaxValue : samples.Values.Min(s => s.SampledAt);
        var movements = tanks.Count == 0 ? [] : await context.TankMovements.AsNoTracking()
            .Where(m => tanks.Contains(m.TankCode) && m.At > since).ToListAsync(cancel);
        var time = LaboratoryTime.Of(await SettingsInForce.LoadAsync(context, cancel));
        var grades = await context.Grades.AsNoTracking().OrderBy(g => g.Code).Select(g => g.Code).ToListAsync(cancel);
        return new SamplesPage(
            [.. numbers.Select(n => Line(samples[n], batches, movements, time))],
            keys.Count > PageSize ? page[^1] : null,
            grades);
    }

    private static IQueryable<Sample> Where(LabContext context, SamplesFilter filter)
    {
        var samples = context.Samples.AsNoTracking();
        if (filter.State is { } state)
            samples = samples.Where(s => s.State == state);
        if (!string.IsNullOrWhiteSpace(filter.Grade))
            samples = samples.Where(s => s.GradeCode == filter.Grade);
        if (!string.IsNullOrWhiteSpace(filter.Text))
        {
            // Codes are written in capitals; what was typed otherwise is tried as typed, too: engines differ in LIKE.
            var (typed, capitals) = (filter.Text.Trim(), filter.Text.Trim().ToUpperInvariant());
            samples = samples.Where(s =>
                s.Number.Contains(capitals)
                || s.GradeCode.Contains(typed) || s.GradeCode.Contains(capitals)
                || (s.TankCode != null && (s.TankCode.Contains(typed) || s.TankCode.Contains(capitals)))
                || context.Batches.Any(b => b.Id == s.BatchId && (b.Number.Contains(typed) || b.Number.Contains(capitals))));
        }

        return samples;
    }

    private static Task<List<SampleCursor>> NewestAsync(IQueryable<Sample> samples, SampleCursor? after, CancellationToken cancel)
    {
        if (after is not null)
            samples = samples.Where(s => s.SampledAt < after.At || (s.SampledAt == after.At && string.Compare(s.Number, after.Number) < 0));
        return samples.OrderByDescending(s => s.SampledAt).ThenByDescending(s => s.Number)
            .Take(PageSize + 1).Select(s => new SampleCursor(s.SampledAt, s.Number)).ToListAsync(cancel);
    }

    private static async Task<List<SampleCursor>> ByDeadlineAsync(IQueryable<Sample> samples, SampleCursor? after, CancellationToken cancel)
    {
        var due = samples.SelectMany(s => s.Tests.Where(t => t.State == TestState.Waiting && t.DueAt != null), (s, t) => new { s.Number, t.DueAt })
            .GroupBy(x => x.Number).Select(g => new { Number = g.Key, DueAt = g.Min(x => x.DueAt)!.Value });
        if (after is not null)
            due = due.Where(d => d.DueAt > after.At || (d.DueAt == after.At && string.Compare(d.Number, after.Number) > 0));
        var rows = await due.OrderBy(d => d.DueAt).ThenBy(d => d.Number).Take(PageSize + 1).ToListAsync(cancel);
        return [.. rows.Select(r => new SampleCursor(r.DueAt, r.Number))];
    }

    private static string? TankOf(Sample sample, Dictionary<Guid, BatchChoice> batches) =>
        sample.BatchId is { } id ? batches.GetValueOrDefault(id)?.Tank : null;

    private static ListedSample Line(Sample sample, Dictionary<Guid, BatchChoice> batches, List<TankMovement> movements, LaboratoryTime time)
    {
        var waiting = sample.Tests.Where(t => t.State == TestState.Waiting).OrderBy(t => t.DueAt).ToList();
        return new ListedSample
        {
            Number = sample.Number,
            Grade = sample.GradeCode,
            Batch = sample.BatchId is { } id ? batches.GetValueOrDefault(id)?.Number : null,
            Tank = sample.TankCode,
            Point = sample.SamplePointCode,
            Level = sample.Level,
            SampledAt = sample.SampledAt,
            State = sample.State,
            Waiting = [.. waiting.Select(t => t.Method)],
            DueAt = waiting.FirstOrDefault(t => t.DueAt is not null)?.DueAt,
            SealedLeft = ContainerSheet.SealedOf(sample).Count(),
            Containers = sample.Containers.Count,
            Void = MovementVoidsSample.Reason(sample, sample.TankCode ?? TankOf(sample, batches), movements, time),
        };
    }
}
