using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Samples;

/// <summary>Reads what a new sample can belong to: active grades, the newest batches, tanks, points.</summary>
public sealed class ReadSampleChoices(Func<LabContext> open)
{
    private const int NewestBatches = 100;

    public async Task<SampleChoices> Run(CancellationToken cancel = default)
    {
        await using var context = open();
        return new SampleChoices(
            await context.Grades.AsNoTracking().Where(g => g.Active).OrderBy(g => g.Code).ToListAsync(cancel),
            await context.Batches.AsNoTracking().OrderByDescending(b => b.CreatedAt).Take(NewestBatches)
                .Select(b => new BatchChoice(b.Number, b.GradeCode, b.TankCode)).ToListAsync(cancel),
            await context.Tanks.AsNoTracking().OrderBy(t => t.Code).ToListAsync(cancel),
            await context.SamplePoints.AsNoTracking().OrderBy(p => p.Code).ToListAsync(cancel));
    }
}
