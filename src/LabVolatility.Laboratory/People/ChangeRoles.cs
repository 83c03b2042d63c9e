using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.People;

/// <summary>Gives a person other roles, and the full name where it changed; open sessions of that person end.</summary>
public sealed class ChangeRoles(Func<LabContext> open)
{
    public async Task<Answer<Person>> Run(Actor actor, Guid personId, string fullName, Roles roles, CancellationToken cancellationToken = default)
    {
        if (actor.Lacks(Right.Administer, "Changing roles") is { } lacking)
            return Answer<Person>.Forbidden(lacking);

        await using var lab = open();
        await using var writing = await lab.BeginWriteAsync(cancellationToken);
        var person = await lab.People.SingleOrDefaultAsync(p => p.Id == personId, cancellationToken);
        if (person is null)
            return Answer<Person>.NotFound("There is no such person.");
        var problems = PersonRules.Problems(new NewPerson(person.UserName!, fullName, roles, person.IsService));
        if (problems.Count > 0)
            return Answer<Person>.Invalid(problems);
        if (!roles.HasFlag(Roles.Administrator) && await LastAdministrator.Is(lab, person, cancellationToken))
            return Answer<Person>.Refused(LastAdministrator.Problem);

        lab.Act = actor.Does("change roles");
        if (person.Roles != roles)
            person.SecurityStamp = SecurityStamp.Make();
        person.Roles = roles;
        person.FullName = fullName.Trim();
        await lab.SaveChangesAsync(cancellationToken);
        await writing.CommitAsync(cancellationToken);
        return Answer<Person>.Done(person);
    }
}
