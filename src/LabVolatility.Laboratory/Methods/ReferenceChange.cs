using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Methods;

/// <summary>A limit or precision changed: releases whose period of use is not over are looked at again.</summary>
internal static class ReferenceChange
{
    public static async Task MarkAsync(LabContext context, string cause, DateTimeOffset now, CancellationToken cancel)
    {
        var today = LaboratoryTime.Of(await SettingsInForce.LoadAsync(context, cancel)).Day(now);
        var batches = await context.Batches.AsNoTracking()
            .Where(b => b.Until >= today && context.Decisions.Any(d => d.BatchId == b.Id)).Select(b => b.Id).ToListAsync(cancel);
        await ReviewMarks.MarkAsync(context, batches, cause, now, cancel);
    }
}
