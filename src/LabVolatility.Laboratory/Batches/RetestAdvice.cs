using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Batches;

/// <summary>What comes next for a batch by the tree of its grade: one sentence, and why.</summary>
public sealed record RetestAdvice
{
    public required RetestOccasion Occasion { get; init; }

    /// <summary>The sample or the quantity that it is about.</summary>
    public required string Subject { get; init; }

    /// <summary>What was found.</summary>
    public required string Found { get; init; }

    /// <summary>The sentence: "Open container 3 of sample S2600417B (step 1 of 3)."</summary>
    public required string Words { get; init; }

    /// <summary>The step to take; null while an earlier one is under way.</summary>
    public RetestKind? Kind { get; init; }

    /// <summary>Its place in the branch, 1 at first.</summary>
    public int Place { get; init; }
    public IReadOnlyList<RetestStep> Branch { get; init; } = [];

    /// <summary>Steps that were passed over, and why.</summary>
    public IReadOnlyList<string> Passed { get; init; } = [];

    /// <summary>The test that would get further results, and how many in all.</summary>
    public Guid? TestId { get; init; }
    public int? Wanted { get; init; }

    /// <summary>Samples to be tested further, or to be drawn again.</summary>
    public IReadOnlyList<string> Samples { get; init; } = [];

    /// <summary>How well the tree is known: common practice until the laboratory sets its own.</summary>
    public required FactStatus Status { get; init; }
}
