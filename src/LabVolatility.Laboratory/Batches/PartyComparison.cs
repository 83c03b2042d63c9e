using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Another party's result held beside ours by the rule agreed beforehand.</summary>
public sealed record PartyComparison
{
    /// <summary>Null where it can't be judged.</summary>
    public required bool? Agree { get; init; }
    public required PartyRule Rule { get; init; }
    public required FactStatus Status { get; init; }

    /// <summary>Our unrounded mean in <see cref="Unit"/>; null where nothing of ours is like theirs.</summary>
    public decimal? Ours { get; init; }
    public int OurCount { get; init; }

    /// <summary>Theirs in <see cref="Unit"/>.</summary>
    public decimal? Theirs { get; init; }
    public string Unit { get; init; } = "";
    public decimal? Difference { get; init; }

    /// <summary>The largest acceptable difference; null where the precision is not set.</summary>
    public decimal? Allowed { get; init; }
    public decimal? Repeatability { get; init; }
    public decimal? Reproducibility { get; init; }
    public required string Why { get; init; }

    /// <summary>The next step in words.</summary>
    public required string Next { get; init; }

    /// <summary>The assigned test value against each limit of the quantity, under ASTM D3244.</summary>
    public IReadOnlyList<AssignedEvidence> Assigned { get; init; } = [];
    public IReadOnlyList<ArithmeticStep> Arithmetic { get; init; } = [];
}
