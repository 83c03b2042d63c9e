namespace LabVolatility.Laboratory.Records;

/// <summary>Collects what a check found, the first ones in words and the rest by number.</summary>
internal sealed class Findings
{
    private const int InWords = 200;

    private readonly List<string> _words = [];
    private int _more;

    public long? FirstBroken { get; private set; }

    public bool None => _words.Count == 0;

    public IReadOnlyList<string> Words => _more == 0 ? _words : [.. _words, $"and {_more} more."];

    public void Add(string finding)
    {
        if (_words.Count < InWords)
            _words.Add(finding);
        else
            _more++;
    }

    public void AddBroken(long sequence, string finding)
    {
        FirstBroken ??= sequence;
        Add(finding);
    }
}
