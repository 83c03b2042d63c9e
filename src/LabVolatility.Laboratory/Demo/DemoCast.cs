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
    private readonly Dictionary<string, string> _made = [];

    private DemoCast(Func<LabContext> open, MovedClock clock, Dictionary<string, Actor> actors) =>
        (Open, Clock, _actors) = (open, clock, actors);

    public Func<LabContext> Open { get; }

    public MovedClock Clock { get; }

    public Actor this[string userName] => _actors[userName];

    /// <param name="read">Opens the database as it stands.</param>
    /// <param name="open">Opens it for the acts.</param>
    /// <param name="clock">The clock of the demo's past.</param>
    /// <param name="cancel">Ends the wait.</param>
    public static async Task<DemoCast> LoadAsync(Func<LabContext> read, Func<LabContext> open, MovedClock clock, CancellationToken cancel)
    {
        await using var lab = read();
        var people = await lab.People.AsNoTracking().ToListAsync(cancel);
        return new DemoCast(open, clock, people.ToDictionary(
            p => p.UserName!, p => new Actor(p.Id, p.FullName, p.Roles, p.IsService ? "interface" : "demo", p.IsService)));
    }

    /// <summary>The program that sends determinations over the interface.</summary>
    public Actor Program => _actors[DemoKey.OwnerUserName];

    /// <summary>Keeps in mind what a command has just made.</summary>
    public void Remember(string command, string made) => _made[command] = made;

    /// <summary>What the command of that name made: a number or an id.</summary>
    public async Task<string> MadeBy(string command, CancellationToken cancel)
    {
        if (_made.TryGetValue(command, out var known))
            return known;
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
