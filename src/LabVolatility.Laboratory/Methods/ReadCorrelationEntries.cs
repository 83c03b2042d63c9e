using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Methods;

/// <summary>Reads every own correlation of a method: in force, drafts and withdrawn ones, the newest first.</summary>
public sealed class ReadCorrelationEntries(Func<LabContext> open)
{
    public async Task<IReadOnlyList<CorrelationLine>> Run(string method, CancellationToken cancel = default)
    {
        await using var context = open();
        return await context.CorrelationEntries.AsNoTracking().Where(e => e.Method == method).OrderByDescending(e => e.Number)
            .Select(e => new CorrelationLine(
                e,
                context.People.Where(p => p.Id == e.DraftedBy).Select(p => p.FullName).First(),
                context.People.Where(p => p.Id == e.ApprovedBy).Select(p => p.FullName).FirstOrDefault()))
            .ToListAsync(cancel);
    }
}
