namespace LabVolatility.Web.Api;

/// <summary>All that is wrong with a request, each mistake at its place as a JSON pointer (RFC 6901).</summary>
internal sealed class Mistakes
{
    private const int Most = 200;
    private readonly Dictionary<string, List<string>> _found = [];

    public bool Any => _found.Count > 0;

    public IReadOnlyDictionary<string, string[]> ByPointer => _found.ToDictionary(f => f.Key, f => f.Value.ToArray());

    public void Add(string pointer, string message)
    {
        if (!_found.TryGetValue(pointer, out var messages) && _found.Count < Most)
            _found[pointer] = messages = [];
        if (messages is not null && !messages.Contains(message))
            messages.Add(message);
    }

    public bool Has(string pointer) => _found.ContainsKey(pointer);

    public static string Step(string pointer, string name) =>
        $"{pointer}/{name.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal)}";
}
