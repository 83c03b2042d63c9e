using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.People;

/// <summary>Opens the first account, an administrator's, while there is none; the caller has checked the code.</summary>
public sealed class MakeFirstAdministrator(Func<LabContext> open, TimeProvider clock, IPasswordHasher<Person> hasher)
{
    public async Task<Answer<Guid>> Run(string userName, string fullName, string password, CancellationToken cancellationToken = default)
    {
        var wanted = new NewPerson(userName, fullName, Roles.Administrator);
        var problems = PersonRules.Problems(wanted).ToList();
        if (PasswordRules.Problem(password, userName ?? "", fullName ?? "") is { } weak)
            problems.Add(new Problem("/password", weak));
        if (problems.Count > 0)
            return Answer<Guid>.Invalid(problems);

        await using var lab = open();
        await using var writing = await lab.BeginWriteAsync(cancellationToken);
        if (await lab.People.AnyAsync(p => !p.IsService, cancellationToken))
            return Answer<Guid>.Refused(new Problem("", "There is an account already: an administrator opens further ones in Setup, People."));

        lab.Act = new Act(null, "first start", "page", "open first account");
        var now = clock.GetUtcNow();
        var person = PersonFactory.Make(wanted, now);
        person.PasswordHash = hasher.HashPassword(person, password);
        person.PasswordSetAt = now;
        lab.People.Add(person);
        await lab.SaveChangesAsync(cancellationToken);
        await writing.CommitAsync(cancellationToken);
        return Answer<Guid>.Done(person.Id);
    }
}
