using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.People;

/// <summary>Whether a person's sessions still hold: the account's state and stamp now.</summary>
public sealed class ReadSessionFacts(Func<LabContext> open)
{
    public async Task<SessionFacts?> Run(Guid personId, CancellationToken cancellationToken = default)
    {
        await using var lab = open();
        return await lab.People
            .Where(p => p.Id == personId && !p.IsService)
            .Select(p => new SessionFacts(p.Active, p.SecurityStamp))
            .SingleOrDefaultAsync(cancellationToken);
    }
}
