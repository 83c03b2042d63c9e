using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Today;

/// <summary>Loads the hand-over notes that wait for somebody, the one due first on top.</summary>
internal static class OpenHandovers
{
    private const int Most = 50;

    public static async Task<IReadOnlyList<OpenHandover>> LoadAsync(LabContext context, CancellationToken cancel)
    {
        var rows = await context.HandoverNotes.AsNoTracking().Where(n => n.Taken == null)
            .Join(context.Batches, n => n.BatchId, b => b.Id, (n, b) => new { Note = n, b.Number })
            .OrderBy(x => x.Note.DueAt == null).ThenBy(x => x.Note.DueAt).ThenBy(x => x.Note.At).Take(Most).ToListAsync(cancel);
        return [.. rows.Select(r => new OpenHandover(r.Number, r.Note))];
    }
}
