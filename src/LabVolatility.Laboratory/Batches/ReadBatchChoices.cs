using LabVolatility.Laboratory.Limits;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Reads what a batch can be: active grades, tanks, areas.</summary>
public sealed class ReadBatchChoices(Func<LabContext> open)
{
    public async Task<BatchChoices> Run(CancellationToken cancel = default)
    {
        await using var context = open();
        var areas = await LimitCatalogue.LoadAsync(context, cancel);
        return new BatchChoices(
            await context.Grades.AsNoTracking().Where(g => g.Active).OrderBy(g => g.Code).ToListAsync(cancel),
            await context.Tanks.AsNoTracking().OrderBy(t => t.Code).ToListAsync(cancel),
            [.. areas.DistinctBy(a => a.Code).OrderBy(a => a.Code, StringComparer.Ordinal).Select(a => new AreaChoice(a.Code, a.Name))]);
    }
}
