namespace LabVolatility.Laboratory.Bench;

/// <summary>The answer to a reported determination.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="Sample">The number of the sample it was made on.</param>
/// <param name="Evaluated">Results and findings as stored.</param>
/// <param name="Next">What the test needs next, in words: nothing more, a duplicate, further containers.</param>
public sealed record ReportedDetermination(Guid Id, string Sample, EvaluatedDetermination Evaluated, string? Next);
