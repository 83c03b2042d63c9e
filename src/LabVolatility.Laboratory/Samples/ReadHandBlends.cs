using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Samples;

/// <summary>Reads what a sample has to do with hand blends; null where there is no such sample.</summary>
public sealed class ReadHandBlends(Func<LabContext> open)
{
    public async Task<HandBlendSheet?> Run(string number, CancellationToken cancel = default)
    {
        await using var context = open();
        var sample = await context.Samples.AsNoTracking().Where(s => s.Number == number).Select(s => new
        {
            s.Id,
            GradeState = context.Grades.Where(g => g.Code == s.GradeCode).Select(g => g.State).First(),
            BatchState = context.Batches.Where(b => b.Id == s.BatchId).Select(b => (ProductState?)b.State).FirstOrDefault(),
        }).FirstOrDefaultAsync(cancel);
        if (sample is null)
            return null;
        var recipe = (await HandBlends.LoadAsync(context, [sample.Id], cancel)).GetValueOrDefault(sample.Id);
        var made = await context.HandBlends.AsNoTracking().Where(b => b.BlendstockId == sample.Id)
            .Join(context.Samples, b => b.SampleId, s => s.Id, (_, s) => s.Number).OrderBy(n => n).ToListAsync(cancel);
        return new HandBlendSheet(recipe, made, recipe is null && (sample.BatchState ?? sample.GradeState) == ProductState.Blendstock);
    }
}
