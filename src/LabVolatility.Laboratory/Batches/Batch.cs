using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Batches;

public sealed class Batch : IRecorded
{
    public Guid Id { get; init; }
    public required string Number { get; init; }
    public required string GradeCode { get; init; }
    public ProductState State { get; init; }
    public string? TankCode { get; set; }
    public decimal? CubicMetres { get; set; }
    public decimal? EthanolPercent { get; set; }

    /// <summary>How the ethanol content was found; an allowance needs a measured one.</summary>
    public string? EthanolMethod { get; set; }
    public IReadOnlyList<Destination> Destinations { get; set; } = [];

    /// <summary>Period of use, local days of the areas, both included.</summary>
    public DateOnly From { get; set; }
    public DateOnly Until { get; set; }
    public DateTimeOffset CreatedAt { get; init; }
    public Guid CreatedBy { get; init; }

    /// <summary>When the ship or the pipeline slot comes.</summary>
    public DateTimeOffset? NeededBy { get; set; }
    public string? Note { get; set; }
    public Guid Version { get; set; }
}
