namespace LabVolatility.Browser.Tests.Harness;

/// <summary>The last lines that a process wrote, for the message of a failing test.</summary>
internal sealed class LastLines(int limit)
{
    private readonly Queue<string> _lines = new();

    public void Add(string? line)
    {
        if (line is null)
            return;

        lock (_lines)
        {
            _lines.Enqueue(line);
            if (_lines.Count > limit)
                _lines.Dequeue();
        }
    }

    public override string ToString()
    {
        lock (_lines)
            return string.Join(Environment.NewLine, _lines);
    }
}
