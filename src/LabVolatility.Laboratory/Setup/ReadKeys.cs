using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Setup;

/// <summary>All keys, the newest first.</summary>
public sealed class ReadKeys(Func<LabContext> open)
{
    private const int Most = 1000;

    public async Task<IReadOnlyList<KeyLine>> Run(CancellationToken cancellationToken = default)
    {
        await using var lab = open();
        var keys =
            from key in lab.Keys
            join owner in lab.People on key.OwnerId equals owner.Id
            orderby key.CreatedAt descending
            select new KeyLine(key.Id, key.Name, key.Prefix, owner.FullName, key.Scopes, key.CreatedAt, key.ExpiresAt, key.RevokedAt, key.LastUsedAt);
        return await keys.Take(Most).ToListAsync(cancellationToken);
    }
}
