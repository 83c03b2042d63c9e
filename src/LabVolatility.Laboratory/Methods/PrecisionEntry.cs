using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Methods;

/// <summary>r and R of a method as the laboratory entered them from its own copy: a + b·X in the unit stated.</summary>
public sealed class PrecisionEntry : IRecorded
{
    public Guid Id { get; init; }
    public required string Method { get; init; }
    public required string Edition { get; init; }
    public required string Quantity { get; init; }
    public ContainerKind? Container { get; init; }
    public decimal? ContainerMillilitres { get; init; }
    public decimal? LowKpa { get; init; }
    public decimal? HighKpa { get; init; }
    public PressureUnit Unit { get; init; }
    public decimal? RepeatabilityConstant { get; init; }
    public decimal? RepeatabilitySlope { get; init; }
    public decimal? ReproducibilityConstant { get; init; }
    public decimal? ReproducibilitySlope { get; init; }

    /// <summary>Where the laboratory read it: designation, edition, clause.</summary>
    public required string Source { get; init; }
    public Guid DraftedBy { get; init; }
    public DateTimeOffset DraftedAt { get; init; }
    public Guid? ApprovedBy { get; set; }
    public DateTimeOffset? ApprovedAt { get; set; }
    public DateTimeOffset? WithdrawnAt { get; set; }
    public Guid Version { get; set; }
}
