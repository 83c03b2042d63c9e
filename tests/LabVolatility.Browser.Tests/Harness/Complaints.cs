using System.Collections.Concurrent;
using Microsoft.Playwright;

namespace LabVolatility.Browser.Tests.Harness;

/// <summary>What went wrong in a browser's pages without anybody looking: errors, and requests to other hosts.</summary>
public sealed class Complaints
{
    private readonly ConcurrentQueue<string> _found = new();
    private readonly List<string> _expected = [];
    private readonly Uri _home;

    internal Complaints(IBrowserContext context, Uri home)
    {
        _home = home;
        context.Request += (_, request) => Check(request.Url);
        context.Console += (_, message) => Note(message);
        context.WebError += (_, error) => Add($"A script threw: {error.Error}");
        context.Page += (_, page) => page.WebSocket += (_, socket) => Check(socket.Url);
    }

    /// <summary>Nothing was found that was not expected.</summary>
    public bool None => !Unexpected.Any();

    private IEnumerable<string> Unexpected => _found.Where(complaint => !_expected.Any(part => complaint.Contains(part, StringComparison.Ordinal)));

    /// <summary>This visit provokes complaints that contain <paramref name="part"/>.</summary>
    public void Expect(string part) => _expected.Add(part);

    public override string ToString() => string.Join(Environment.NewLine, Unexpected);

    private void Check(string url)
    {
        var address = new Uri(url);
        var leaves = address.Scheme is not ("data" or "blob" or "about") && address.Authority != _home.Authority;
        if (leaves)
            Add($"A request left the host: {url}");
    }

    private void Note(IConsoleMessage message)
    {
        if (message.Type == "error")
            Add($"Error on the console of {message.Page?.Url}: {message.Text}");
    }

    private void Add(string complaint) => _found.Enqueue(complaint);
}
