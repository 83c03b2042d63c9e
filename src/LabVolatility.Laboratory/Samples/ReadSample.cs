using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Samples;

/// <summary>Reads one sample with its containers, tests and determinations; null where there is none of that number.</summary>
public sealed class ReadSample(Func<LabContext> open, TimeProvider clock)
{
    public async Task<SampleSheet?> Run(string number, CancellationToken cancel = default)
    {
        await using var context = open();
        var sample = await context.Samples.AsNoTracking()
            .Include(s => s.Tests).Include(s => s.Containers).ThenInclude(c => c.Openings).AsSingleQuery()
            .FirstOrDefaultAsync(s => s.Number == number, cancel);
        if (sample is null)
            return null;
        var time = LaboratoryTime.Of(await SettingsInForce.LoadAsync(context, cancel));
        var grade = await context.Grades.AsNoTracking().Where(g => g.Code == sample.GradeCode).Select(g => g.Name).FirstAsync(cancel);
        var determinations = await DeterminationStates.LoadAsync(context, [sample.Id], cancel);
        var batch = sample.BatchId is null
            ? null
            : await context.Batches.AsNoTracking().Where(b => b.Id == sample.BatchId).Select(b => new { b.Number, b.TankCode }).FirstAsync(cancel);
        var tank = sample.TankCode ?? batch?.TankCode;
        var movements = tank is null ? [] : await context.TankMovements.AsNoTracking()
            .Where(m => m.TankCode == tank && m.At > sample.SampledAt).ToListAsync(cancel);
        return new SampleSheet
        {
            Sample = sample,
            GradeName = grade,
            Batch = batch?.Number,
            Containers = ContainerSheet.Of(sample, null, time.Day(clock.GetUtcNow())),
            Determinations = determinations,
            Void = MovementVoidsSample.Reason(sample, tank, movements, time),
            BatchDecided = sample.BatchId is { } id && await AmendDetermination.IsDecidedAsync(context, id, cancel),
            Names = await NamesAsync(context, sample, cancel),
        };
    }

    /// <summary>A stored result as the bench shows one.</summary>
    public static ReportedResult Report(Result result) => StoredDetermination.Report(result);

    private static Task<Dictionary<Guid, string>> NamesAsync(LabContext context, Sample sample, CancellationToken cancel)
    {
        var ids = sample.Containers.SelectMany(c => c.Openings).Select(o => o.By)
            .Append(sample.RegisteredBy).Append(sample.ReceivedBy).Append(sample.VerdictBy).OfType<Guid>().Distinct().ToList();
        return context.People.AsNoTracking().Where(p => ids.Contains(p.Id)).ToDictionaryAsync(p => p.Id, p => p.FullName, cancel);
    }
}
