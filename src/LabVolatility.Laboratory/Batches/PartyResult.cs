using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Batches;

/// <summary>A result that an inspector, a recipient or a third laboratory reported, entered beside ours.</summary>
public sealed class PartyResult : IReported
{
    public Guid Id { get; init; }
    public Guid BatchId { get; init; }
    public PartyKind Kind { get; init; }

    /// <summary>The party by name.</summary>
    public required string Party { get; init; }

    /// <summary>The laboratory that tested for it.</summary>
    public required string Laboratory { get; init; }

    /// <summary>The sample of ours that was split; null where it isn't known.</summary>
    public string? SampleNumber { get; init; }
    public required string Quantity { get; init; }

    /// <summary>Whose equation gave it; never empty: the method's own by its designation.</summary>
    public required string Correlation { get; init; }
    public required string Method { get; init; }
    public string? Edition { get; init; }

    /// <summary>The value as typed.</summary>
    public required string Typed { get; init; }
    public decimal Value { get; init; }
    public required string Unit { get; init; }

    /// <summary>How many results make the value.</summary>
    public int Count { get; init; }
    public bool Hazy { get; init; }
    public DateOnly MeasuredOn { get; init; }

    /// <summary>Number of their report.</summary>
    public string? Reference { get; init; }

    /// <summary>Seal numbers of the split sample, parted by commas, as typed.</summary>
    public string? Seals { get; init; }
    public Guid EnteredBy { get; init; }
    public required string EnteredByName { get; init; }
    public DateTimeOffset EnteredAt { get; init; }
}
