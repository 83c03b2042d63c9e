using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Today;

/// <summary>Loads what accounts and keys ask of an administrator.</summary>
internal static class AccountsToday
{
    private static readonly TimeSpan Soon = TimeSpan.FromDays(30);

    public static async Task<AccountWork> LoadAsync(LabContext context, DateTimeOffset now, CancellationToken cancel)
    {
        var until = now + Soon;
        var people = await context.People.AsNoTracking()
            .Where(p => p.Active && !p.IsService && (p.PasswordSetAt == null || p.LockoutEnd > now))
            .OrderBy(p => p.FullName).Select(p => new { p.FullName, IsNew = p.PasswordSetAt == null }).ToListAsync(cancel);
        var keys = await context.Keys.AsNoTracking().Where(k => k.RevokedAt == null && k.ExpiresAt > now && k.ExpiresAt <= until)
            .OrderBy(k => k.ExpiresAt).Select(k => new EndingKey(k.Name, k.ExpiresAt)).ToListAsync(cancel);
        return new AccountWork(
            [.. people.Where(p => p.IsNew).Select(p => p.FullName)], [.. people.Where(p => !p.IsNew).Select(p => p.FullName)], keys);
    }
}
