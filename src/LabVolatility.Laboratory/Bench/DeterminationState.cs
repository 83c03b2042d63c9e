using LabVolatility.Core.Methods;

namespace LabVolatility.Laboratory.Bench;

/// <summary>A determination as it stands now: its latest revision, results and measurer, in words.</summary>
public sealed record DeterminationState
{
    public required Guid Id { get; init; }
    public required Guid SampleId { get; init; }
    public required Guid ContainerId { get; init; }
    public required Guid? TestId { get; init; }
    public required int ContainerNumber { get; init; }
    public required ContainerKind ContainerKind { get; init; }
    public required decimal ContainerMillilitres { get; init; }
    public required string Method { get; init; }
    public required string Edition { get; init; }
    public required string Instrument { get; init; }
    public required DateTimeOffset MeasuredAt { get; init; }

    /// <summary>Who measured or took it on; null while it waits for a person.</summary>
    public required Guid? MeasurerId { get; init; }
    public required string? Measurer { get; init; }

    /// <summary>The account of the measurer, as programs name people.</summary>
    public string? MeasurerAccount { get; init; }
    public required DateTimeOffset RecordedAt { get; init; }
    public required IReadOnlyList<DeterminationRevision> Revisions { get; init; }
    public required IReadOnlyList<Result> Results { get; init; }

    /// <summary>The laboratory's own correlation that its result was worked out by; null where it has none.</summary>
    public Correlation? OwnCorrelation { get; init; }

    /// <summary>The readings and settings that count, as the method takes them.</summary>
    public Readings Quantities => Reading.Quantities(Current.Readings, Current.Handling);

    public DeterminationRevision Current => Revisions[^1];

    /// <summary>Why it does not count in a decision; null when it counts.</summary>
    public string? DoesNotCount =>
        Current.SetAside ? $"set aside: {Current.AssignableCause}"
        : MeasurerId is null ? "no person has taken it on as its operator"
        : null;

    public bool Hazy => Current.Handling.Hazy;

    /// <summary>The result of a quantity under a correlation, or null.</summary>
    public Result? ResultFor(string quantity, string? correlation) =>
        Results.FirstOrDefault(r => r.Quantity == quantity && (correlation is null || r.Correlation == correlation));
}
