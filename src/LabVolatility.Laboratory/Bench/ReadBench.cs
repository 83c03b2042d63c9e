using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Bench;

/// <summary>Reads what waits at the bench for a person.</summary>
public sealed class ReadBench(Func<LabContext> open, TimeProvider clock)
{
    public async Task<BenchDay> Run(Guid person, CancellationToken cancel = default)
    {
        await using var context = open();
        return await LoadAsync(context, person, clock.GetUtcNow(), cancel);
    }

    internal static async Task<BenchDay> LoadAsync(LabContext context, Guid person, DateTimeOffset now, CancellationToken cancel)
    {
        var today = LaboratoryTime.Of(await SettingsInForce.LoadAsync(context, cancel)).Day(now);
        return new BenchDay(
            await WaitingAsync(context, person, today, cancel),
            await TakeOnAsync(context, cancel),
            await ReadInstruments.LinesAsync(context, today, cancel));
    }

    /// <summary>Tests of received samples that wait, the earliest deadline first.</summary>
    internal static async Task<IReadOnlyList<WaitingTest>> WaitingAsync(LabContext context, Guid person, DateOnly today, CancellationToken cancel)
    {
        var samples = await context.Samples.AsNoTracking()
            .Where(s => s.State == SampleState.Received && s.Tests.Any(t => t.State == TestState.Waiting))
            .Include(s => s.Tests).Include(s => s.Containers).ThenInclude(c => c.Openings).AsSplitQuery().ToListAsync(cancel);
        var tests = samples.SelectMany(s => s.Tests.Where(t => t.State == TestState.Waiting).Select(t => (Sample: s, Test: t))).ToList();
        var testIds = tests.Select(t => t.Test.Id).ToList();
        var determinations = await context.Determinations.AsNoTracking().Where(d => d.TestId != null && testIds.Contains(d.TestId.Value))
            .Where(d => !d.Revisions.OrderByDescending(r => r.Revision).First().SetAside)
            .Select(d => new { TestId = d.TestId!.Value, HasOperator = d.MeasuredBy != null || d.TakenOn != null }).ToListAsync(cancel);
        var drafts = await context.Drafts.AsNoTracking().Where(d => d.PersonId == person && testIds.Contains(d.TestId))
            .ToDictionaryAsync(d => d.TestId, d => d.SavedAt, cancel);
        var batchIds = samples.Select(s => s.BatchId).OfType<Guid>().Distinct().ToList();
        var batches = await context.Batches.AsNoTracking().Where(b => batchIds.Contains(b.Id)).ToDictionaryAsync(b => b.Id, b => b.Number, cancel);
        return [.. tests.OrderBy(t => t.Test.DueAt is null).ThenBy(t => t.Test.DueAt).ThenBy(t => t.Sample.Number, StringComparer.Ordinal)
            .Select(t => new WaitingTest
            {
                TestId = t.Test.Id,
                SampleNumber = t.Sample.Number,
                Grade = t.Sample.GradeCode,
                Batch = t.Sample.BatchId is { } id ? batches.GetValueOrDefault(id) : null,
                Tank = t.Sample.TankCode,
                Method = t.Test.Method,
                DueAt = t.Test.DueAt,
                Made = determinations.Count(d => d.TestId == t.Test.Id && d.HasOperator),
                ToTakeOn = determinations.Count(d => d.TestId == t.Test.Id && !d.HasOperator),
                Wanted = t.Test.Wanted,
                Offered = ContainerSheet.Offered(ContainerSheet.Of(t.Sample, TestMethods.TryFind(t.Test.Method, out var method) ? method : null, today)),
                Why = determinations.Exists(d => d.TestId == t.Test.Id && d.HasOperator) ? t.Test.Why : null,
                OwnDraftAt = drafts.TryGetValue(t.Test.Id, out var at) ? at : null,
            })];
    }

    private static async Task<IReadOnlyList<WaitingForPerson>> TakeOnAsync(LabContext context, CancellationToken cancel)
    {
        var rows = await context.Determinations.AsNoTracking().Where(d => d.MeasuredBy == null && d.TakenOn == null)
            .Include(d => d.Revisions)
            .Join(context.Samples, d => d.SampleId, s => s.Id, (d, s) => new { Determination = d, s.Number })
            .ToListAsync(cancel);
        return [.. rows.Select(r => new { r.Determination, r.Number, Current = r.Determination.Revisions.OrderBy(v => v.Revision).Last() })
            .Where(r => !r.Current.SetAside)
            .OrderBy(r => r.Determination.MeasuredAt)
            .Select(r => new WaitingForPerson(
                r.Determination.Id, r.Number, r.Determination.Method, r.Determination.InstrumentCode, r.Determination.MeasuredAt,
                AsRead(r.Current.Readings.TotalPressure)))];
    }

    // The digits as sent: a unit is put behind only where none was.
    private static string AsRead(TypedReading? total) =>
        total is null ? "no reading" : total.Typed.Any(char.IsLetter) ? total.Typed.Trim() : $"{total.Typed.Trim()} {total.Unit}";
}
