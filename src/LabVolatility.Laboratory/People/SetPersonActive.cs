using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.People;

/// <summary>Closes an account, or opens it again; accounts are never deleted. Open sessions end.</summary>
public sealed class SetPersonActive(Func<LabContext> open, TimeProvider clock)
{
    public async Task<Answer<Person>> Run(Actor actor, Guid personId, bool active, string? reason, CancellationToken cancellationToken = default)
    {
        if (actor.Lacks(Right.Administer, active ? "Opening an account again" : "Closing an account") is { } lacking)
            return Answer<Person>.Forbidden(lacking);

        await using var lab = open();
        await using var writing = await lab.BeginWriteAsync(cancellationToken);
        var person = await lab.People.SingleOrDefaultAsync(p => p.Id == personId, cancellationToken);
        if (person is null)
            return Answer<Person>.NotFound("There is no such person.");
        if (!active && person.Id == actor.Id)
            return Answer<Person>.Refused(new Problem("", "Nobody closes their own account: ask another administrator."));
        if (!active && await LastAdministrator.Is(lab, person, cancellationToken))
            return Answer<Person>.Refused(LastAdministrator.Problem);

        lab.Act = actor.Does(active ? "open account again" : "close account", reason);
        person.Active = active;
        person.SecurityStamp = SecurityStamp.Make();
        if (!active)
            await RevokeKeys(lab, person.Id, cancellationToken);
        await lab.SaveChangesAsync(cancellationToken);
        await writing.CommitAsync(cancellationToken);
        return Answer<Person>.Done(person);
    }

    private async Task RevokeKeys(LabContext lab, Guid ownerId, CancellationToken cancellationToken)
    {
        foreach (var key in await lab.Keys.Where(k => k.OwnerId == ownerId && k.RevokedAt == null).ToListAsync(cancellationToken))
            key.RevokedAt = clock.GetUtcNow();
    }
}
