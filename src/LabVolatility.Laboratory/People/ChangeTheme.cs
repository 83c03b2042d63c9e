using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.People;

/// <summary>Remembers whether a person works light or dark; a taste, so no record.</summary>
public sealed class ChangeTheme(Func<LabContext> open)
{
    /// <param name="personId">Whose taste.</param>
    /// <param name="theme">"light", "dark", or null to follow the system.</param>
    /// <param name="cancellationToken">Ends the wait.</param>
    public async Task Run(Guid personId, string? theme, CancellationToken cancellationToken = default)
    {
        if (theme is not (null or "light" or "dark"))
            throw new ArgumentOutOfRangeException(nameof(theme), theme, "A theme is light, dark or null.");
        await using var lab = open();
        var person = await lab.People.SingleAsync(p => p.Id == personId, cancellationToken);
        person.Theme = theme;
        await lab.SaveChangesAsync(cancellationToken);
    }
}
