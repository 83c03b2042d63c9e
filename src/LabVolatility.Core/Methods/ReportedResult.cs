using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>A quantity as a method reports it, with everything that led to it.</summary>
/// <param name="Quantity">The standard's symbol: "Ptot", "ASVP", "DVPE", "RVP".</param>
/// <param name="Value">Unrounded, in <paramref name="Unit"/>.</param>
/// <param name="Reported">Rounded once by the method's resolution, with its zeros: "63.8".</param>
/// <param name="Unit">The unit of value and reported text.</param>
/// <param name="Suffix">"H" for a hazy sample, else empty.</param>
/// <param name="Correlation">The correlation's name, empty for what was read.</param>
/// <param name="Equation">The equation as printed in the unit it was worked in, empty for what was read.</param>
/// <param name="Source">Where the equation is laid down.</param>
/// <param name="Status">How well the equation is known.</param>
/// <param name="Arithmetic">The steps from the reading to the reported text.</param>
public sealed record ReportedResult(
    string Quantity,
    decimal Value,
    string Reported,
    PressureUnit Unit,
    string Suffix,
    string Correlation,
    string Equation,
    string Source,
    FactStatus Status,
    IReadOnlyList<ArithmeticStep> Arithmetic)
{
    /// <summary>What to cite for the correlation, so that it is found again for ever; empty for what was read.</summary>
    public string CorrelationVersion { get; init; } = "";
}
