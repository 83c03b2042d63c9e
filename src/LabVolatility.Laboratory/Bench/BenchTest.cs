using LabVolatility.Core.Methods;
using LabVolatility.Core.Precision;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Bench;

/// <summary>All that the bench needs to know for one test of one sample.</summary>
public sealed record BenchTest
{
    public required Sample Sample { get; init; }
    public required SampleKind Kind { get; init; }
    public string? Batch { get; init; }
    public required AssignedTest Test { get; init; }
    public required TestMethod Method { get; init; }
    public required IReadOnlyList<ContainerSheet> Containers { get; init; }

    /// <summary>Those set up for the method, ready or not.</summary>
    public required IReadOnlyList<InstrumentLine> Instruments { get; init; }

    /// <summary>Statements of r and R in force.</summary>
    public required IReadOnlyList<PrecisionStatement> Precision { get; init; }

    /// <summary>The laboratory's own correlation in force today, where the method's isn't public; null: not set.</summary>
    public Correlation? OwnCorrelation { get; init; }

    /// <summary>What was measured for this test before.</summary>
    public required IReadOnlyList<DeterminationState> Made { get; init; }

    /// <summary>The person's own draft; null where there is none.</summary>
    public BenchEntry? Draft { get; init; }
    public DateTimeOffset? DraftAt { get; init; }

    /// <summary>Others who have typed into the same test, with the time of their last word.</summary>
    public required IReadOnlyList<(string Name, DateTimeOffset At)> OtherDrafts { get; init; }

    /// <summary>The person's account name, under which they report.</summary>
    public string? UserName { get; init; }

    /// <summary>The last total pressures in kPa of this grade and method, the newest first; at most 20.</summary>
    public required IReadOnlyList<decimal> RecentKpa { get; init; }

    /// <summary>The test that waits next; null where none does, or where it was not asked for.</summary>
    public WaitingTest? Next { get; init; }
}
