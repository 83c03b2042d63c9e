using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Limits;

/// <summary>A limit of the laboratory's own: a contract's or an internal one, or a legal one it entered.</summary>
public sealed class LaboratoryLimit : IRecorded
{
    public Guid Id { get; init; }
    public required string Key { get; init; }
    public required string AreaCode { get; init; }
    public string? GradeCode { get; init; }
    public PointOfCompliance? Point { get; init; }
    public required string Quantity { get; init; }
    public string? Correlation { get; init; }
    public decimal? Minimum { get; init; }
    public decimal? Maximum { get; init; }
    public required string Unit { get; init; }
    public int Digits { get; init; }
    public IReadOnlyList<string> Methods { get; init; } = [];
    public Standing Standing { get; init; }
    public bool Required { get; init; } = true;
    public required string Source { get; init; }
    public DateOnly EffectiveFrom { get; init; }
    public DateOnly? EffectiveUntil { get; init; }
    public Guid DraftedBy { get; init; }
    public DateTimeOffset DraftedAt { get; init; }
    public Guid? ApprovedBy { get; set; }
    public DateTimeOffset? ApprovedAt { get; set; }
    public DateTimeOffset? WithdrawnAt { get; set; }
    public Guid Version { get; set; }

    internal EffectiveDays Days => new(EffectiveFrom, EffectiveUntil);
}
