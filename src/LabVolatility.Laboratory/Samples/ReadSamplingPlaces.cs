using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Samples;

/// <summary>Reads the tanks and sample points as they are set up.</summary>
public sealed class ReadSamplingPlaces(Func<LabContext> open)
{
    public async Task<SamplingPlaces> Run(CancellationToken cancel = default)
    {
        await using var context = open();
        return new SamplingPlaces(
            await context.Tanks.AsNoTracking().OrderBy(t => t.Code).ToListAsync(cancel),
            await context.SamplePoints.AsNoTracking().OrderBy(p => p.Code).ToListAsync(cancel),
            await context.Grades.AsNoTracking().OrderBy(g => g.Code).Select(g => g.Code).ToListAsync(cancel));
    }
}
