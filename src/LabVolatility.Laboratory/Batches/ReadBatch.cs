using LabVolatility.Laboratory.Certificates;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Reads one batch with its assessment, its certificates and its story.</summary>
public sealed class ReadBatch(Func<LabContext> open, TimeProvider clock)
{
    /// <returns>Null where there is no such batch.</returns>
    public async Task<BatchSheet?> Run(string number, CancellationToken cancel = default)
    {
        await using var context = open();
        var batch = await context.Batches.AsNoTracking().FirstOrDefaultAsync(b => b.Number == number, cancel);
        if (batch is null || await new AssessBatch(open).Run(number, cancel) is not { } assessed)
            return null;
        var today = LaboratoryTime.Of(await SettingsInForce.LoadAsync(context, cancel)).Day(clock.GetUtcNow());
        var certificates = await new ReadCertificates(open).OfBatch(number, cancel);
        return new BatchSheet(batch, assessed, certificates, await BatchStory.LoadAsync(context, batch, assessed, cancel))
        {
            Next = await RetestStanding.AdviseAsync(context, batch, assessed.Evidence, assessed.InForce, today, cancel),
            Cargoes = await new ReadCargoes(open).OfBatch(batch.Id, cancel),
            Handovers = await context.HandoverNotes.AsNoTracking().Include(n => n.Taken).Where(n => n.BatchId == batch.Id)
                .OrderByDescending(n => n.At).ToListAsync(cancel),
        };
    }
}
