using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.People;

/// <summary>The person behind a session, with the roles held now.</summary>
public sealed class FindActor(Func<LabContext> open)
{
    /// <returns>Null for an account that is closed, a program's, or still on its one-time password.</returns>
    public async Task<Actor?> Run(Guid personId, string origin, CancellationToken cancellationToken = default)
    {
        await using var lab = open();
        return await lab.People
            .Where(p => p.Id == personId && p.Active && !p.IsService && p.PasswordSetAt != null)
            .Select(p => new Actor(p.Id, p.FullName, p.Roles, origin, false))
            .SingleOrDefaultAsync(cancellationToken);
    }
}
