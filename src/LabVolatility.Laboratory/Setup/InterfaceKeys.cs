using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Setup;

/// <summary>Finds whose key a program shows.</summary>
/// <param name="open">Opens the database.</param>
/// <param name="clock">The clock.</param>
/// <param name="demoKey">The demo's key, where there is one; null outside demo mode.</param>
public sealed class InterfaceKeys(Func<LabContext> open, TimeProvider clock, DemoKey? demoKey)
{
    private static readonly TimeSpan UseIsNotedEvery = TimeSpan.FromMinutes(1);

    /// <summary>The holder of a good key; null for an unknown, ended, revoked or closed account's key.</summary>
    public async Task<KeyHolder?> Find(string bearer, CancellationToken cancellationToken = default)
    {
        if (string.IsNullOrWhiteSpace(bearer) || bearer.Length > KeySecret.Longest)
            return null;
        var hash = KeySecret.Hash(bearer);
        await using var lab = open();
        if (demoKey is not null && KeySecret.Same(demoKey.Hash, hash))
            return await DemoHolder(lab, cancellationToken);

        var now = clock.GetUtcNow();
        var key = await lab.Keys.AsNoTracking().SingleOrDefaultAsync(k => k.Hash == hash, cancellationToken);
        if (key is null || !KeySecret.Same(key.Hash, hash) || key.RevokedAt is not null || key.ExpiresAt <= now)
            return null;
        var owner = await lab.People.AsNoTracking().SingleAsync(p => p.Id == key.OwnerId, cancellationToken);
        if (!owner.Active)
            return null;
        if (key.LastUsedAt is null || now - key.LastUsedAt >= UseIsNotedEvery)
            await lab.Keys.Where(k => k.Id == key.Id).ExecuteUpdateAsync(k => k.SetProperty(x => x.LastUsedAt, now), cancellationToken);
        return new KeyHolder(key.Id, key.Name, key.Scopes, new Actor(owner.Id, $"{owner.FullName} (key {key.Name})", owner.Roles, "interface", IsKey: true));
    }

    private static async Task<KeyHolder?> DemoHolder(LabContext lab, CancellationToken cancellationToken)
    {
        var owner = await lab.People.AsNoTracking().FirstOrDefaultAsync(p => p.IsService && p.UserName == DemoKey.OwnerUserName && p.Active, cancellationToken);
        return owner is null
            ? null
            : new KeyHolder(Guid.Empty, "demo key", KeyScopes.Calculate | KeyScopes.Read | KeyScopes.Write | KeyScopes.Import,
                new Actor(owner.Id, owner.FullName, owner.Roles, "interface", IsKey: true));
    }
}
