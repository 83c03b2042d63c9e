using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Demo;

/// <summary>The demo's people as actors, with the database and the clock that they act by.</summary>
internal sealed class DemoCast
{
    private readonly Dictionary<string, Actor> _actors;

    private DemoCast(Func<LabContext> open, MovedClock clock, Dictionary<string, Actor> actors) =>
        (Open, Clock, _actors) = (open, clock, actors);

    public Func<LabContext> Open { get; }

    public MovedClock Clock { get; }

    public Actor this[string userName] => _actors[userName];

    public static async Task<DemoCast> LoadAsync(Func<LabContext> open, MovedClock clock, CancellationToken cancel)
    {
        await using var lab = open();
        var people = await lab.People.AsNoTracking().ToListAsync(cancel);
        return new DemoCast(open, clock, people.ToDictionary(
            p => p.UserName!, p => new Actor(p.Id, p.FullName, p.Roles, p.IsService ? "interface" : "demo", p.IsService)));
    }

    /// <summary>The program that sends determinations over the interface.</summary>
    public Actor Program => _actors[DemoKey.OwnerUserName];

    /// <summary>What the command of that name made: a number or an id.</summary>
    public async Task<string> MadeBy(string command, CancellationToken cancel)
    {
        await using var lab = Open();
        var id = DemoName.Id(command);
        return await lab.Commands.Where(c => c.Id == id).Select(c => c.Subject).FirstAsync(cancel);
    }

    /// <summary>The answer's value.</summary>
    /// <exception cref="InvalidOperationException">The use case said no: the demo tells a story that the rules don't allow.</exception>
    public static T Must<T>(Answer<T> answer, string what) => answer.Ok
        ? answer.Value!
        : throw new InvalidOperationException($"The demo laboratory could not be made, {what}: {answer.Kind}. {answer.Text}");
}
