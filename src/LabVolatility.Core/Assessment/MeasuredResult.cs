namespace LabVolatility.Core.Assessment;

/// <summary>A reported quantity that is offered to the limits.</summary>
/// <param name="Quantity">"DVPE", "RVP", "E70".</param>
/// <param name="Value">Unrounded, in <paramref name="Unit"/>.</param>
/// <param name="Unit">A pressure symbol, "% v/v" or "index".</param>
/// <param name="Method">The designation of the method that gave it.</param>
/// <param name="Correlation">The correlation's name; null: EPA's for RVP, else the method's own.</param>
/// <param name="Count">How many results make the value, 1 or more.</param>
/// <param name="Repeatability">r in <paramref name="Unit"/>; null: not set.</param>
/// <param name="Reproducibility">R in <paramref name="Unit"/>; null: not set.</param>
/// <param name="Hazy">Whether its sample was hazy.</param>
public sealed record MeasuredResult(
    string Quantity,
    decimal Value,
    string Unit,
    string Method,
    string? Correlation = null,
    int Count = 1,
    decimal? Repeatability = null,
    decimal? Reproducibility = null,
    bool Hazy = false);
