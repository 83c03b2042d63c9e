using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.People;

/// <summary>Whether anybody has an account yet.</summary>
public sealed class AnyPerson(Func<LabContext> open)
{
    public async Task<bool> Run(CancellationToken cancellationToken = default)
    {
        await using var lab = open();
        return await lab.People.AnyAsync(p => !p.IsService, cancellationToken);
    }
}
