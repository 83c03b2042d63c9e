using LabVolatility.Core.Limits;

namespace LabVolatility.Laboratory.Batches;

/// <summary>A batch to be registered, or what is changed of it.</summary>
public sealed record BatchRequest
{
    public Guid CommandId { get; init; } = Guid.NewGuid();
    public string? Number { get; init; }
    public string? Grade { get; init; }

    /// <summary>Null: as the grade says.</summary>
    public ProductState? State { get; init; }
    public string? Tank { get; init; }
    public decimal? CubicMetres { get; init; }
    public decimal? EthanolPercent { get; init; }

    /// <summary>How ethanol was measured; without it the content counts as not measured.</summary>
    public string? EthanolMethod { get; init; }
    public IReadOnlyList<Destination> Destinations { get; init; } = [];
    public DateOnly? From { get; init; }
    public DateOnly? Until { get; init; }
    public DateTimeOffset? NeededBy { get; init; }
    public string? Note { get; init; }
}
