using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.People;

/// <summary>Who is or will be on call, and who could be.</summary>
public sealed class ReadOnCall(Func<LabContext> open, TimeProvider clock)
{
    /// <param name="Turns">Those that have not ended, the next one first.</param>
    /// <param name="Signers">Everybody who may sign decisions.</param>
    public sealed record List(IReadOnlyList<OnCallLine> Turns, IReadOnlyList<Signer> Signers);

    public async Task<List> Run(CancellationToken cancel = default)
    {
        await using var context = open();
        var now = clock.GetUtcNow();
        var turns = await context.OnCallTurns.AsNoTracking().Where(t => t.Until > now).OrderBy(t => t.From)
            .Join(context.People, t => t.PersonId, p => p.Id, (t, p) => new OnCallLine(t.Id, p.FullName, t.Phone, t.From, t.Until)).ToListAsync(cancel);
        return new List(turns, await Signers.LoadAsync(context, now, cancel));
    }
}
