using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;

namespace LabVolatility.Core.Assessment;

/// <summary>What came of holding a value against a limit.</summary>
/// <param name="Outcome">The outcome.</param>
/// <param name="Value">The unrounded value; null: there was none.</param>
/// <param name="Compared">The value as compared: rounded under E29's rounding method, else as it is; null: none.</param>
/// <param name="Margin">From what is compared to the nearest edge of the limit, positive inside; null: no value.</param>
/// <param name="ProbabilityBeyond">The chance that the true value is beyond the limit, 0 to 1; null without R.</param>
/// <param name="AcceptanceMinimum">The lowest value that conforms; null: none, or not known.</param>
/// <param name="AcceptanceMaximum">The highest value that conforms; null: none, or not known.</param>
/// <param name="RejectionMinimum">Below it a value does not conform; null: none, or not known.</param>
/// <param name="RejectionMaximum">Above it a value does not conform; null: none, or not known.</param>
/// <param name="ResultsToDecide">How many more results at the present mean would decide: 0 when decided; null: none can.</param>
/// <param name="Why">The reason, in words.</param>
/// <param name="Arithmetic">The steps.</param>
public sealed record LimitOutcome(
    Outcome Outcome,
    decimal? Value,
    string? Compared,
    decimal? Margin,
    decimal? ProbabilityBeyond,
    decimal? AcceptanceMinimum,
    decimal? AcceptanceMaximum,
    decimal? RejectionMinimum,
    decimal? RejectionMaximum,
    int? ResultsToDecide,
    string Why,
    IReadOnlyList<ArithmeticStep> Arithmetic);
