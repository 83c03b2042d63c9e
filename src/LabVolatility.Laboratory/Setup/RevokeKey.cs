using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Setup;

/// <summary>Ends a key at once; it can't be brought back.</summary>
public sealed class RevokeKey(Func<LabContext> open, TimeProvider clock)
{
    public async Task<Answer<InterfaceKey>> Run(Actor actor, Guid keyId, CancellationToken cancellationToken = default)
    {
        if (actor.Lacks(Right.Administer, "Revoking a key") is { } lacking)
            return Answer<InterfaceKey>.Forbidden(lacking);

        await using var lab = open();
        var key = await lab.Keys.SingleOrDefaultAsync(k => k.Id == keyId, cancellationToken);
        if (key is null)
            return Answer<InterfaceKey>.NotFound("There is no such key.");
        if (key.RevokedAt is not null)
            return Answer<InterfaceKey>.Repeated(key);
        lab.Act = actor.Does("revoke key");
        key.RevokedAt = clock.GetUtcNow();
        await lab.SaveChangesAsync(cancellationToken);
        return Answer<InterfaceKey>.Done(key);
    }
}
