using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.People;

/// <summary>Loads everybody who may sign decisions, those on call now first.</summary>
internal static class Signers
{
    public static async Task<IReadOnlyList<Signer>> LoadAsync(LabContext context, DateTimeOffset now, CancellationToken cancel)
    {
        var people = await context.People.AsNoTracking().Where(p => p.Active && !p.IsService)
            .Select(p => new { p.Id, p.FullName, p.Roles }).ToListAsync(cancel);
        var turns = await context.OnCallTurns.AsNoTracking().Where(t => t.From <= now && t.Until > now)
            .OrderByDescending(t => t.Until).ToListAsync(cancel);
        return
        [
            .. people.Where(p => Rights.Allow(p.Roles, Right.Decide))
                .Select(p => (Person: p, Turn: turns.Find(t => t.PersonId == p.Id)))
                .OrderBy(x => x.Turn is null).ThenBy(x => x.Person.FullName, StringComparer.Ordinal)
                .Select(x => new Signer(x.Person.Id, x.Person.FullName, x.Person.Roles, x.Turn?.Phone, x.Turn?.Until)),
        ];
    }
}
