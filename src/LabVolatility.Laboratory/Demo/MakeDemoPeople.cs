using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Demo;

/// <summary>Names the demo laboratory and opens its accounts; does nothing where they are there.</summary>
public sealed class MakeDemoPeople(Func<LabContext> open, TimeProvider clock, IPasswordHasher<Person> hasher)
{
    public const string LaboratoryName = "Northmere Refinery, Fuels Laboratory";

    internal const string TimeZone = "Europe/Amsterdam";

    public async Task Run(CancellationToken cancellationToken = default)
    {
        await using var lab = open();
        await using var writing = await lab.BeginWriteAsync(cancellationToken);
        if (await lab.People.AnyAsync(cancellationToken))
            return;

        lab.Act = new Act(null, "demo", "demo", "make demo laboratory");
        var settings = await lab.Settings.SingleAsync(cancellationToken);
        settings.Name = LaboratoryName;
        settings.Place = "Northmere";
        settings.TimeZone = TimeZone;
        settings.EmergencyNumbers = "Site emergency (invented): 5555\nControl room (invented): 5501\nFirst aid (invented): 5510";
        foreach (var demo in DemoPeople.All)
            lab.People.Add(Open(demo));
        lab.People.Add(PersonFactory.Make(
            new NewPerson(DemoKey.OwnerUserName, "Demo programs", Roles.Analyst | Roles.BlendingEngineer, IsService: true), clock.GetUtcNow()));
        await lab.SaveChangesAsync(cancellationToken);
        await writing.CommitAsync(cancellationToken);
    }

    private Person Open(DemoPerson demo)
    {
        var person = PersonFactory.Make(new NewPerson(demo.UserName, demo.FullName, demo.Roles), clock.GetUtcNow());
        person.PasswordHash = hasher.HashPassword(person, demo.Password);
        person.PasswordSetAt = clock.GetUtcNow();
        return person;
    }
}
