using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Samples;

/// <summary>The recipe of a sample that was made cold at the bench: blendstock, ethanol, volumes, temperature.</summary>
public sealed class HandBlend : IReported
{
    /// <summary>The sample that was made.</summary>
    public Guid SampleId { get; init; }

    /// <summary>The blendstock sample, and the container that was used up for it.</summary>
    public Guid BlendstockId { get; init; }
    public Guid BlendstockContainerId { get; init; }

    public required string EthanolLot { get; init; }
    public required TypedReading BlendstockVolume { get; init; }
    public required TypedReading EthanolVolume { get; init; }

    /// <summary>Of the blend as it was closed.</summary>
    public required TypedReading Temperature { get; init; }

    public DateTimeOffset MadeAt { get; init; }
    public Guid MadeBy { get; init; }

    /// <summary>Cautions that were acknowledged, with the moment of each.</summary>
    public IReadOnlyList<ConfirmedStep> Confirmed { get; init; } = [];

    public string? Note { get; init; }
}
