using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Batches;

/// <summary>A step of the grade's tree that a person took: why, and what it set going.</summary>
public sealed class StepTaken : IReported
{
    public Guid Id { get; init; }
    public Guid BatchId { get; init; }
    public RetestOccasion Occasion { get; init; }

    /// <summary>What the occasion was about: a sample's number, a quantity.</summary>
    public required string Subject { get; init; }

    /// <summary>The step's place in its branch, 1 at first; unique, so that one of several people takes it.</summary>
    public int Place { get; init; }

    /// <summary>The branch as it stood, step by step.</summary>
    public IReadOnlyList<RetestStep> Branch { get; init; } = [];
    public RetestKind Kind { get; init; }

    /// <summary>The test that gets further results; null for other steps.</summary>
    public Guid? TestId { get; init; }

    /// <summary>How many results that test has in all once the step is done.</summary>
    public int? Wanted { get; init; }

    /// <summary>Numbers of the samples concerned: tested further, or called for anew.</summary>
    public IReadOnlyList<string> Samples { get; init; } = [];

    /// <summary>What was found, in words.</summary>
    public required string Found { get; init; }
    public required string Reason { get; init; }
    public Guid By { get; init; }
    public required string ByName { get; init; }
    public DateTimeOffset At { get; init; }
}
