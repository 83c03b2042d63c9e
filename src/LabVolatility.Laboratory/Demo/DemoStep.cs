namespace LabVolatility.Laboratory.Demo;

/// <summary>One act of the demo's past. Done again, it changes nothing.</summary>
/// <param name="At">When somebody did it.</param>
/// <param name="Do">What they did, by the laboratory's own use cases.</param>
internal sealed record DemoStep(DateTimeOffset At, Func<CancellationToken, Task> Do);
