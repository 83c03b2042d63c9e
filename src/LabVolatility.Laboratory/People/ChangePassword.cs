using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.People;

/// <summary>Replaces the own password; the caller has checked the old one. Other sessions of the person end.</summary>
public sealed class ChangePassword(Func<LabContext> open, TimeProvider clock, IPasswordHasher<Person> hasher)
{
    public async Task<Answer<Person>> Run(Guid personId, string newPassword, CancellationToken cancellationToken = default)
    {
        await using var lab = open();
        var person = await lab.People.SingleOrDefaultAsync(p => p.Id == personId && p.Active && !p.IsService, cancellationToken);
        if (person is null)
            return Answer<Person>.NotFound("This account is closed.");
        var laboratory = await lab.Settings.Select(s => s.Name).SingleOrDefaultAsync(cancellationToken) ?? "";
        if (PasswordRules.Problem(newPassword, person.UserName ?? "", person.FullName, laboratory) is { } weak)
            return Answer<Person>.Invalid(new Problem("/newPassword", weak));
        if (hasher.VerifyHashedPassword(person, person.PasswordHash ?? "", newPassword) != PasswordVerificationResult.Failed)
            return Answer<Person>.Invalid(new Problem("/newPassword", "This is the password that you have now."));

        lab.Act = new Act(person.Id, person.FullName, "page", "change own password");
        person.PasswordHash = hasher.HashPassword(person, newPassword);
        person.PasswordSetAt = clock.GetUtcNow();
        person.SecurityStamp = SecurityStamp.Make();
        await lab.SaveChangesAsync(cancellationToken);
        return Answer<Person>.Done(person);
    }
}
