using System.Collections.Concurrent;
using System.Data.Common;
using System.Text.Json;
using System.Threading.Channels;

namespace LabVolatility.Laboratory.People;

/// <summary>Who has which thing open, at all nodes.</summary>
/// <remarks>
/// Each node tells the others at once what changes, and every <see cref="Beat"/> who is still there. Whom a node has
/// not named for <see cref="Expiry"/> has gone with it.
/// </remarks>
public sealed class Presence(TimeProvider clock, Func<string, CancellationToken, Task>? tellOthers = null)
{
    public static readonly TimeSpan Beat = TimeSpan.FromSeconds(5);
    public static readonly TimeSpan Expiry = 3 * Beat;

    // PostgreSQL carries less than 8,000 bytes; a person takes some hundreds.
    private const int PeopleAMessage = 8;

    private readonly Guid _node = Guid.NewGuid();
    private readonly Channel<PresenceMessage> _told = Channel.CreateUnbounded<PresenceMessage>();
    private readonly ConcurrentDictionary<Guid, Heard> _people = new();

    /// <summary>Raised with the place where somebody came, went or began to type.</summary>
    public event Action<string>? Changed;

    /// <summary>Everybody at a place, whoever came first in front.</summary>
    public IReadOnlyList<PresentPerson> At(string place) =>
        [.. _people.Values.Select(h => h.Person).Where(p => p.Place == place).OrderBy(p => p.Since).ThenBy(p => p.Page)];

    /// <summary>Somebody at this node has come, or does something else now.</summary>
    public void Put(PresentPerson person)
    {
        Keep(person, isOwn: true);
        Tell([person], []);
    }

    /// <summary>The page at this node was left.</summary>
    public void Leave(Guid page)
    {
        Forget(page);
        Tell([], [page]);
    }

    /// <summary>Takes what another node tells.</summary>
    internal void Hear(string text)
    {
        if (Read(text) is not { } message || message.Node == _node)
            return;
        foreach (var person in message.Here)
            Keep(person, isOwn: false);
        foreach (var page in message.Gone)
            Forget(page);
    }

    /// <summary>Tells the other nodes, and forgets whom they no longer name, until cancelled.</summary>
    internal async Task RunAsync(CancellationToken cancellationToken)
    {
        if (tellOthers is null)
            return;
        await using var beat = clock.CreateTimer(_ => OnBeat(), null, Beat, Beat);
        await foreach (var message in _told.Reader.ReadAllAsync(cancellationToken))
        {
            try
            {
                await tellOthers(JsonSerializer.Serialize(message), cancellationToken);
            }
            catch (DbException)
            {
                // The database is away, which others report; the next beat tells all of it again.
            }
        }
    }

    private void OnBeat()
    {
        var oldest = clock.GetUtcNow() - Expiry;
        foreach (var heard in _people.Values.Where(h => !h.IsOwn && h.At < oldest))
            Forget(heard.Person.Page);
        foreach (var some in _people.Values.Where(h => h.IsOwn).Select(h => h.Person).Chunk(PeopleAMessage))
            Tell(some, []);
    }

    private void Keep(PresentPerson person, bool isOwn)
    {
        var known = _people.GetValueOrDefault(person.Page)?.Person;
        _people[person.Page] = new Heard(person, isOwn, clock.GetUtcNow());
        if (known != person)
            Changed?.Invoke(person.Place);
        if (known is not null && known.Place != person.Place)
            Changed?.Invoke(known.Place);
    }

    private void Forget(Guid page)
    {
        if (_people.TryRemove(page, out var gone))
            Changed?.Invoke(gone.Person.Place);
    }

    private void Tell(IReadOnlyList<PresentPerson> here, IReadOnlyList<Guid> gone)
    {
        if (tellOthers is not null)
            _told.Writer.TryWrite(new PresenceMessage(_node, here, gone));
    }

    private static PresenceMessage? Read(string text)
    {
        try
        {
            return JsonSerializer.Deserialize<PresenceMessage>(text);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private sealed record Heard(PresentPerson Person, bool IsOwn, DateTimeOffset At);
}
