using LabVolatility.Core.Limits;

namespace LabVolatility.Core.Assessment;

/// <summary>A value and the bare limit it is held against, all in the limit's unit.</summary>
public sealed record LimitInput
{
    /// <summary>The unrounded value, or the mean of the unrounded results; null: there is none.</summary>
    public decimal? Value { get; init; }

    /// <summary>How many results make the value, 1 or more.</summary>
    public int Count { get; init; } = 1;

    /// <summary>The effective minimum; null: none.</summary>
    public decimal? Minimum { get; init; }

    /// <summary>The effective maximum; null: none.</summary>
    public decimal? Maximum { get; init; }

    /// <summary>Decimals of the limit.</summary>
    public required int Digits { get; init; }

    /// <summary>The unit, for the arithmetic as written down.</summary>
    public string Unit { get; init; } = "";

    /// <summary>How the value is held against the limit.</summary>
    public DecisionRule Rule { get; init; } = DecisionRule.Simple;

    /// <summary>What is compared under the simple rule.</summary>
    public Comparison Comparison { get; init; } = Comparison.Rounding;

    /// <summary>How sure a guarded verdict is, at least 0.5 and below 1.</summary>
    public decimal Confidence { get; init; } = 0.95m;

    /// <summary>r, above zero; null: not set.</summary>
    public decimal? Repeatability { get; init; }

    /// <summary>R, above zero; null: not set.</summary>
    public decimal? Reproducibility { get; init; }

    /// <summary>Whether a sample was hazy, which voids the precision.</summary>
    public bool Hazy { get; init; }
}
