using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Limits;

/// <summary>An area as the laboratory knows it: a calendar whose windows name the class in force.</summary>
public sealed class LaboratoryArea : IRecorded
{
    public Guid Id { get; init; }
    public required string Code { get; init; }
    public required string Name { get; init; }

    /// <summary>The state was granted the bioethanol derogation of Directive 98/70/EC.</summary>
    public bool Derogation { get; init; }
    public IReadOnlyList<SeasonWindow> Calendar { get; init; } = [];
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
