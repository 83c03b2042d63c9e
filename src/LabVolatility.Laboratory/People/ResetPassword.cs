using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.People;

/// <summary>Gives a one-time password to a person who lost the own one; open sessions end, a lock is lifted.</summary>
public sealed class ResetPassword(Func<LabContext> open, IPasswordHasher<Person> hasher)
{
    public async Task<Answer<PersonAdded>> Run(Actor actor, Guid personId, CancellationToken cancellationToken = default)
    {
        if (actor.Lacks(Right.Administer, "Giving a one-time password") is { } lacking)
            return Answer<PersonAdded>.Forbidden(lacking);
        if (actor.Id == personId)
            return Answer<PersonAdded>.Refused(new Problem("", "The own password is changed under Account, with the old one."));

        await using var lab = open();
        var person = await lab.People.SingleOrDefaultAsync(p => p.Id == personId, cancellationToken);
        if (person is null)
            return Answer<PersonAdded>.NotFound("There is no such person.");
        if (person.IsService || !person.Active)
            return Answer<PersonAdded>.Refused(new Problem("", "A closed account or a program's account has no password."));

        lab.Act = actor.Does("give one-time password");
        var password = OneTimePassword.Make();
        person.PasswordHash = hasher.HashPassword(person, password);
        person.PasswordSetAt = null;
        person.SecurityStamp = SecurityStamp.Make();
        person.AccessFailedCount = 0;
        person.LockoutEnd = null;
        await lab.SaveChangesAsync(cancellationToken);
        return Answer<PersonAdded>.Done(new PersonAdded(person.Id, person.UserName!, password));
    }
}
