using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Samples;

/// <summary>The grades that samples and batches may be of now.</summary>
public sealed class GradesInUse(Func<LabContext> open)
{
    public async Task<IReadOnlyList<Grade>> Run(CancellationToken cancel = default)
    {
        await using var context = open();
        return await context.Grades.AsNoTracking().Where(g => g.Active).OrderBy(g => g.Code).ToListAsync(cancel);
    }
}
