using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Bench;

/// <summary>A reported quantity of one revision of a determination.</summary>
public sealed class Result : IReported
{
    public Guid Id { get; init; }
    public Guid DeterminationId { get; init; }
    public int Revision { get; init; }
    public required string Quantity { get; init; }
    public required string Correlation { get; init; }
    public required string CorrelationVersion { get; init; }

    /// <summary>For lists and trends; <see cref="Exact"/> holds every digit.</summary>
    public decimal Value { get; init; }

    /// <summary>The unrounded value with every digit, invariant text: engines pad and cut decimals differently.</summary>
    public required string Exact { get; init; }
    public required string Reported { get; init; }
    public required string Unit { get; init; }
    public string Suffix { get; init; } = "";
    public required string Equation { get; init; }
    public required string Source { get; init; }
    public FactStatus Status { get; init; }
    public IReadOnlyList<ArithmeticStep> Arithmetic { get; init; } = [];
}
