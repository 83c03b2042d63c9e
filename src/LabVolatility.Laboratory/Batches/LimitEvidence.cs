using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;

namespace LabVolatility.Laboratory.Batches;

/// <summary>One limit with the batch held against it.</summary>
public sealed record LimitEvidence
{
    public required string Key { get; init; }
    public required string Area { get; init; }
    public required PointOfCompliance Point { get; init; }
    public string? Season { get; init; }

    /// <summary>The state that it was picked for: the batch's, or that of a hand blend made from it.</summary>
    public ProductState State { get; init; }

    /// <summary>Number of the hand blend that is held against it; null: the batch's own samples.</summary>
    public string? HandBlend { get; init; }
    public required string Quantity { get; init; }
    public string? Correlation { get; init; }
    public required string Unit { get; init; }
    public required int Digits { get; init; }
    public decimal? Minimum { get; init; }
    public decimal? Maximum { get; init; }
    public decimal? Allowance { get; init; }
    public decimal? EffectiveMinimum { get; init; }
    public decimal? EffectiveMaximum { get; init; }
    public decimal? AcceptanceMinimum { get; init; }
    public decimal? AcceptanceMaximum { get; init; }
    public required Standing Standing { get; init; }
    public required bool Required { get; init; }
    public required string Source { get; init; }
    public required FactStatus Status { get; init; }

    /// <summary>Why this limit was picked, with its days.</summary>
    public required string Why { get; init; }
    public required Outcome Outcome { get; init; }

    /// <summary>Why the outcome is what it is.</summary>
    public required string OutcomeWhy { get; init; }
    public decimal? Value { get; init; }
    public string? Compared { get; init; }
    public decimal? Margin { get; init; }
    public decimal? ProbabilityBeyond { get; init; }
    public int? ResultsToDecide { get; init; }
    public decimal? Repeatability { get; init; }
    public decimal? Reproducibility { get; init; }

    /// <summary>Results in the value.</summary>
    public int Count { get; init; }

    /// <summary>Which samples make the value, in words.</summary>
    public string? Basis { get; init; }
    public required IReadOnlyList<ArithmeticStep> Arithmetic { get; init; }
}
