using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.People;

/// <summary>Opens an account with a one-time password, which the person replaces at the first sign-in.</summary>
public sealed class AddPerson(Func<LabContext> open, TimeProvider clock, IPasswordHasher<Person> hasher)
{
    public async Task<Answer<PersonAdded>> Run(Actor actor, NewPerson wanted, CancellationToken cancellationToken = default)
    {
        if (actor.Lacks(Right.Administer, "Opening an account") is { } lacking)
            return Answer<PersonAdded>.Forbidden(lacking);
        return await Add(actor.Does("open account"), wanted, cancellationToken);
    }

    /// <summary>The same from the command line or at start, where whoever runs the program answers for it.</summary>
    internal async Task<Answer<PersonAdded>> Add(Act act, NewPerson wanted, CancellationToken cancellationToken)
    {
        var problems = PersonRules.Problems(wanted);
        if (problems.Count > 0)
            return Answer<PersonAdded>.Invalid(problems);

        await using var lab = open();
        lab.Act = act;
        var key = wanted.UserName.ToUpperInvariant();
        if (await lab.People.AnyAsync(p => p.NormalizedUserName == key, cancellationToken))
            return Taken(wanted);

        var password = wanted.IsService ? null : OneTimePassword.Make();
        var person = PersonFactory.Make(wanted, clock.GetUtcNow());
        person.PasswordHash = password is null ? null : hasher.HashPassword(person, password);
        lab.People.Add(person);
        try
        {
            await lab.SaveChangesAsync(cancellationToken);
        }
        catch (DbUpdateException race) when (lab.IsUniqueViolation(race))
        {
            return Taken(wanted);
        }

        return Answer<PersonAdded>.Done(new PersonAdded(person.Id, wanted.UserName, password));
    }

    private static Answer<PersonAdded> Taken(NewPerson wanted) =>
        Answer<PersonAdded>.Invalid(new Problem("/userName", $"The sign-in name \"{wanted.UserName}\" is taken; names are never handed on, so choose another."));
}
