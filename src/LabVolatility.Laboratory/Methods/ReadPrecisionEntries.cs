using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Methods;

/// <summary>Reads every precision entry of a method: in force, drafts and withdrawn ones.</summary>
public sealed class ReadPrecisionEntries(Func<LabContext> open)
{
    /// <summary>By quantity, the newest first.</summary>
    public async Task<IReadOnlyList<PrecisionLine>> Run(string method, CancellationToken cancel = default)
    {
        await using var context = open();
        return await context.PrecisionEntries.AsNoTracking().Where(e => e.Method == method)
            .OrderBy(e => e.Quantity).ThenByDescending(e => e.DraftedAt)
            .Select(e => new PrecisionLine(
                e,
                context.People.Where(p => p.Id == e.DraftedBy).Select(p => p.FullName).First(),
                context.People.Where(p => p.Id == e.ApprovedBy).Select(p => p.FullName).FirstOrDefault()))
            .ToListAsync(cancel);
    }
}
