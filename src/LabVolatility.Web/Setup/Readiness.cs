namespace LabVolatility.Web.Setup;

/// <summary>Whether the program may be used yet, and what it waits for.</summary>
public sealed class Readiness : IProgress<StartupProgress>
{
    private volatile State _state = new(false, "The program is starting", null);

    public bool Ready => _state.Ready;

    /// <summary>A sentence without its full stop.</summary>
    public string Waits => _state.Waits;

    public StartupProgress? Progress => _state.Progress;

    public void Begin(string what) => _state = new State(false, what, null);

    public void Report(StartupProgress value) => _state = _state with { Progress = value };

    public void Finish() => _state = new State(true, "Ready", null);

    private sealed record State(bool Ready, string Waits, StartupProgress? Progress);
}
