using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Samples;

/// <summary>One bottle, can or cylinder of a sample.</summary>
public sealed class Container : IRecorded
{
    public Guid Id { get; init; }
    public Guid SampleId { get; init; }

    /// <summary>1, 2, … within the sample.</summary>
    public int Number { get; init; }

    /// <summary>What the label's bar code says.</summary>
    public required string Code { get; init; }
    public ContainerKind Kind { get; init; }
    public decimal VolumeMillilitres { get; init; }
    public decimal? FillPercent { get; set; }

    /// <summary>Temperature at receipt, as typed.</summary>
    public string? TemperatureTyped { get; set; }
    public decimal? TemperatureCelsius { get; set; }
    public string? Seal { get; set; }

    /// <summary>Null: not looked at yet.</summary>
    public bool? SealIntact { get; set; }
    public bool Leaking { get; set; }
    public string? Condition { get; set; }

    /// <summary>Earliest day the portion may be given away or disposed of.</summary>
    public DateOnly? RetainUntil { get; set; }
    public DateTimeOffset? DisposedAt { get; set; }
    public Guid Version { get; set; }

    public List<ContainerOpening> Openings { get; init; } = [];
}
