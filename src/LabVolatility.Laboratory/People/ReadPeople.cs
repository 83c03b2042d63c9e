using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.People;

/// <summary>All accounts, those in use first.</summary>
public sealed class ReadPeople(Func<LabContext> open)
{
    private const int Most = 1000;

    public async Task<IReadOnlyList<PersonLine>> Run(CancellationToken cancellationToken = default)
    {
        await using var lab = open();
        return await lab.People
            .OrderByDescending(p => p.Active).ThenBy(p => p.FullName).Take(Most)
            .Select(p => new PersonLine(p.Id, p.UserName!, p.FullName, p.Roles, p.Active, p.IsService, p.PasswordSetAt, p.LockoutEnd))
            .ToListAsync(cancellationToken);
    }
}
