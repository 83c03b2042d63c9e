using System.Collections.Concurrent;

namespace LabVolatility.Web.People;

/// <summary>The pages open at this node, by their token.</summary>
public sealed class OpenSessions
{
    private readonly ConcurrentDictionary<string, CircuitSession> _open = new();

    public void Add(CircuitSession session) => _open[session.Token] = session;

    public void Remove(CircuitSession session) => _open.TryRemove(session.Token, out _);

    public CircuitSession? Find(string token) => _open.GetValueOrDefault(token);
}
