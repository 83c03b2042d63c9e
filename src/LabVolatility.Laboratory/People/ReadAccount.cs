using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.People;

/// <summary>A person's own account; null where it is closed.</summary>
public sealed class ReadAccount(Func<LabContext> open)
{
    public async Task<AccountFacts?> Run(Guid personId, CancellationToken cancellationToken = default)
    {
        await using var lab = open();
        return await lab.People
            .Where(p => p.Id == personId && p.Active && !p.IsService)
            .Select(p => new AccountFacts(p.Id, p.UserName!, p.FullName, p.Roles, p.Theme, p.PasswordSetAt))
            .SingleOrDefaultAsync(cancellationToken);
    }
}
