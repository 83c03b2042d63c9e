using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;

namespace LabVolatility.Laboratory.Batches;

/// <summary>A batch's assessment with all it rests on. Frozen as JSON when a decision is signed.</summary>
/// <remarks>Holds no clock reading of its own: the same facts give the same text, and so the same hash.</remarks>
public sealed record Evidence
{
    public int Format { get; init; } = 1;
    public required string Batch { get; init; }
    public required string Grade { get; init; }
    public required string GradeName { get; init; }
    public required ProductState State { get; init; }
    public string? Tank { get; init; }
    public decimal? CubicMetres { get; init; }
    public decimal? EthanolPercent { get; init; }
    public string? EthanolMethod { get; init; }
    public required DateOnly From { get; init; }
    public required DateOnly Until { get; init; }
    public required IReadOnlyList<Destination> Destinations { get; init; }
    public required DecisionRule Rule { get; init; }
    public required decimal Confidence { get; init; }
    public required IReadOnlyList<SampleEvidence> Samples { get; init; }

    /// <summary>How level samples agree, per quantity; empty where there is one level.</summary>
    public required IReadOnlyList<LevelEvidence> Levels { get; init; }
    public required IReadOnlyList<LimitEvidence> Limits { get; init; }

    /// <summary>What other parties reported, each held beside ours: it informs, it never enters our mean.</summary>
    public IReadOnlyList<PartyEvidence> Parties { get; init; } = [];

    /// <summary>What three laboratories come to; null where there are no three.</summary>
    public DisputeEvidence? Dispute { get; init; }

    /// <summary>The steps of the grade's tree that were taken, with the branch as it stood.</summary>
    public IReadOnlyList<StepEvidence> Steps { get; init; } = [];

    /// <summary>Areas and days without a limit, and why; edges that clash.</summary>
    public required IReadOnlyList<string> Remarks { get; init; }

    /// <summary>What stands against a release apart from the limits, in words.</summary>
    public required IReadOnlyList<string> Blocks { get; init; }
    public required Outcome Outcome { get; init; }

    /// <summary>A legal limit is not shown to be met.</summary>
    public required bool FailsLegalLimit { get; init; }
}
