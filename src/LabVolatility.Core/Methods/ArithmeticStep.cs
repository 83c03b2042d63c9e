namespace LabVolatility.Core.Methods;

/// <summary>One line of the arithmetic behind a number, for the screen, the certificate and the auditor.</summary>
/// <param name="Label">What is worked out: "Correlation".</param>
/// <param name="Expression">The numbers put in: "0.965 · 70.0 − 3.78".</param>
/// <param name="Value">What came out, unrounded; null where the step gives words only.</param>
/// <param name="Unit">The unit of the value, empty where it has none.</param>
/// <param name="Source">Where the step is laid down: "ASTM D5191-22, equation 1".</param>
public sealed record ArithmeticStep(string Label, string Expression, decimal? Value, string Unit, string Source);
