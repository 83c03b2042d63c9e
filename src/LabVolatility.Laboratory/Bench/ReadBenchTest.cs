using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Bench;

/// <summary>Reads one test of one sample for the person at the bench; null where the sample has no such test.</summary>
/// <remarks>What waits next is read only when asked for: it costs as much as all the rest.</remarks>
public sealed class ReadBenchTest(Func<LabContext> open, TimeProvider clock)
{
    private const int Recent = 20;

    public async Task<BenchTest?> Run(Guid person, string number, string designation, bool withNext = false, CancellationToken cancel = default)
    {
        if (!TestMethods.TryFind(designation, out var method))
            return null;
        await using var context = open();
        var sample = await context.Samples.AsNoTracking()
            .Include(s => s.Tests).Include(s => s.Containers).ThenInclude(c => c.Openings).AsSingleQuery()
            .FirstOrDefaultAsync(s => s.Number == number, cancel);
        var test = sample?.Tests.Where(t => t.Method == designation && t.State != TestState.Cancelled)
            .OrderBy(t => t.State == TestState.Waiting ? 0 : 1).FirstOrDefault();
        if (sample is null || test is null)
            return null;
        var time = LaboratoryTime.Of(await SettingsInForce.LoadAsync(context, cancel));
        var today = time.Day(clock.GetUtcNow());
        var drafts = await context.Drafts.AsNoTracking().Where(d => d.TestId == test.Id)
            .Join(context.People, d => d.PersonId, p => p.Id, (d, p) => new { d.PersonId, d.Content, d.SavedAt, p.FullName }).ToListAsync(cancel);
        var own = drafts.FirstOrDefault(d => d.PersonId == person);
        var instruments = await ReadInstruments.LinesAsync(context, today, cancel);
        var made = await DeterminationStates.LoadAsync(context, [sample.Id], cancel);
        var waiting = withNext ? await ReadBench.WaitingAsync(context, person, today, cancel) : [];
        var about = await context.Grades.AsNoTracking().Where(g => g.Code == sample.GradeCode)
            .Select(g => new
            {
                g.Kind,
                Batch = context.Batches.Where(b => b.Id == sample.BatchId).Select(b => b.Number).FirstOrDefault(),
                UserName = context.People.Where(p => p.Id == person).Select(p => p.UserName).FirstOrDefault(),
            }).FirstAsync(cancel);
        return new BenchTest
        {
            Sample = sample,
            Kind = about.Kind,
            Batch = about.Batch,
            Test = test,
            Method = method,
            Containers = ContainerSheet.Of(sample, method, today),
            Instruments = [.. instruments.Where(i => i.Instrument.Methods.Contains(designation))],
            Precision = await PrecisionInForce.LoadAsync(context, cancel),
            OwnCorrelation = await OwnCorrelations.OnAsync(context, method, today, cancel),
            Made = [.. made.Where(d => d.TestId == test.Id)],
            Draft = own is null ? null : SaveDraft.Read(own.Content),
            DraftAt = own?.SavedAt,
            OtherDrafts = [.. drafts.Where(d => d.PersonId != person).Select(d => (d.FullName, d.SavedAt))],
            UserName = about.UserName,
            RecentKpa = await RecentAsync(context, sample.GradeCode, method, cancel),
            Next = waiting.FirstOrDefault(w => w.TestId != test.Id && w.Offered > 0),
        };
    }

    private static async Task<IReadOnlyList<decimal>> RecentAsync(LabContext context, string grade, TestMethod method, CancellationToken cancel)
    {
        var rows = await context.Determinations.AsNoTracking()
            .Where(d => d.Method == method.Designation && context.Samples.Any(s => s.Id == d.SampleId && s.GradeCode == grade))
            .OrderByDescending(d => d.MeasuredAt).Take(Recent)
            .SelectMany(d => d.Results.Where(r => r.Revision == 1 && r.Quantity == method.TotalSymbol).Select(r => new { r.Value, r.Unit }))
            .ToListAsync(cancel);
        return [.. rows.Select(r => PressureUnits.TryParse(r.Unit, out var unit) && AbsolutePressure.TryFrom(r.Value, unit, out var total)
            ? total.In(PressureUnit.Kilopascal) : (decimal?)null).OfType<decimal>()];
    }
}
