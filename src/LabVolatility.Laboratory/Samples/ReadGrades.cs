using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Samples;

/// <summary>Reads all grades, those that are out of use last.</summary>
public sealed class ReadGrades(Func<LabContext> open)
{
    public async Task<IReadOnlyList<Grade>> Run(CancellationToken cancel = default)
    {
        await using var context = open();
        return await context.Grades.AsNoTracking().OrderByDescending(g => g.Active).ThenBy(g => g.Code).ToListAsync(cancel);
    }
}
