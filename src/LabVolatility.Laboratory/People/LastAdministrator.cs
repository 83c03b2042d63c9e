using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.People;

/// <summary>A laboratory without an administrator could never let anybody in again.</summary>
internal static class LastAdministrator
{
    public static Problem Problem { get; } =
        new("", "This is the last administrator: give the role to somebody else first.", "last-administrator");

    public static async Task<bool> Is(LabContext lab, Person person, CancellationToken cancellationToken)
    {
        if (!person.Active || !person.Roles.HasFlag(Roles.Administrator))
            return false;
        var others = await lab.People.Where(p => p.Active && !p.IsService && p.Id != person.Id).Select(p => p.Roles).ToListAsync(cancellationToken);
        return !others.Any(r => r.HasFlag(Roles.Administrator));
    }
}
