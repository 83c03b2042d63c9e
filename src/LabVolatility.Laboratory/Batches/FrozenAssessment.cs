using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Batches;

/// <summary>The evidence a decision rests on, as it was: results, limits, instrument checks and findings.</summary>
public sealed class FrozenAssessment : IReported
{
    public Guid Id { get; init; }
    public Guid BatchId { get; init; }
    public DateTimeOffset At { get; init; }
    public Guid By { get; init; }
    public Outcome Outcome { get; init; }

    /// <summary>A legal limit is not shown to be met: no concession can be made.</summary>
    public bool FailsLegalLimit { get; init; }

    /// <summary>The whole assessment as JSON text.</summary>
    public required string Evidence { get; init; }

    /// <summary>SHA-256 of <see cref="Evidence"/>, hexadecimal.</summary>
    public required string EvidenceHash { get; init; }
    public required string Build { get; init; }
}
