using LabVolatility.Core.Limits;

namespace LabVolatility.Core.Assessment;

/// <summary>Two parties' values and the limit that their assigned test value is held against, all in the limit's unit.</summary>
/// <param name="First">One party's value, not rounded.</param>
/// <param name="Second">The other's.</param>
/// <param name="Reproducibility">R, above zero; null: not set.</param>
/// <param name="Minimum">The effective minimum; null: none.</param>
/// <param name="Maximum">The effective maximum; null: none.</param>
/// <param name="Digits">Decimals of the limit.</param>
/// <param name="Probability">
/// P, above 0 and below 1: the chance of acceptance when the true value sits exactly on the limit, agreed beforehand.
/// </param>
/// <param name="Comparison">Absolute or rounding, agreed beforehand.</param>
/// <param name="Unit">The unit, for the words and the arithmetic.</param>
public sealed record AssignedTestInput(
    decimal First, decimal Second, decimal? Reproducibility, decimal? Minimum, decimal? Maximum, int Digits,
    decimal Probability, Comparison Comparison, string Unit = "");
