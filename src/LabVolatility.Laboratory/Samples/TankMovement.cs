using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Samples;

public sealed class TankMovement : IReported
{
    public Guid Id { get; init; }
    public required string TankCode { get; init; }
    public MovementKind Kind { get; init; }

    /// <summary>When it began.</summary>
    public DateTimeOffset At { get; init; }
    public decimal? CubicMetres { get; init; }
    public string? Note { get; init; }
    public Guid RecordedBy { get; init; }
    public DateTimeOffset RecordedAt { get; init; }

    /// <summary>True when the tank no longer holds what was sampled before.</summary>
    public bool ChangesContents => Kind is not MovementKind.Delivery;
}
