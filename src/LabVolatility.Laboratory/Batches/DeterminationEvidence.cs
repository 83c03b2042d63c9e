using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Bench;

namespace LabVolatility.Laboratory.Batches;

/// <summary>A determination as evidence, as it stood in its latest revision.</summary>
public sealed record DeterminationEvidence
{
    public required Guid Id { get; init; }
    public required int Container { get; init; }
    public required string Method { get; init; }
    public required string Edition { get; init; }
    public required string Instrument { get; init; }

    /// <summary>"ready" or the reasons against it on the day of measuring.</summary>
    public required string InstrumentState { get; init; }
    public required DateTimeOffset MeasuredAt { get; init; }
    public required Guid? MeasurerId { get; init; }
    public required string? Measurer { get; init; }

    /// <summary>Everybody who measured, took on or amended it.</summary>
    public required IReadOnlyList<Guid> Hands { get; init; }
    public required int Revision { get; init; }
    public required string? AmendedBecause { get; init; }

    /// <summary>Why it does not count, or null.</summary>
    public required string? DoesNotCount { get; init; }
    public required ReadingsAsTyped Readings { get; init; }
    public required HandlingAsTyped Handling { get; init; }
    public required IReadOnlyList<Finding> Findings { get; init; }
    public required IReadOnlyList<ResultEvidence> Results { get; init; }
}
