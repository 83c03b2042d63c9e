using LabVolatility.Core.Methods;

namespace LabVolatility.Laboratory.Batches;

/// <summary>A reported result as evidence.</summary>
public sealed record ResultEvidence(
    string Quantity, string Exact, string Reported, string Unit, string Suffix, string Correlation, string CorrelationVersion,
    string Equation, string Source, FactStatus Status, IReadOnlyList<ArithmeticStep> Arithmetic);
