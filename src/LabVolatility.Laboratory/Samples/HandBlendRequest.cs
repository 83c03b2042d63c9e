using LabVolatility.Laboratory.Bench;

namespace LabVolatility.Laboratory.Samples;

/// <summary>A hand blend as it was made, exactly as typed.</summary>
public sealed record HandBlendRequest
{
    /// <summary>The same id sent again makes nothing new.</summary>
    public Guid CommandId { get; init; } = Guid.NewGuid();

    /// <summary>Number of the blendstock sample.</summary>
    public required string Blendstock { get; init; }

    /// <summary>Its container that was used up.</summary>
    public int ContainerNumber { get; init; }

    public string? EthanolLot { get; init; }
    public string? BlendstockVolume { get; init; }
    public string? EthanolVolume { get; init; }

    /// <summary>Of the blend as it was closed; °C where no unit is typed.</summary>
    public string? Temperature { get; init; }

    /// <summary>What the blend was put in.</summary>
    public IReadOnlyList<ContainerRequest> Containers { get; init; } = [];

    /// <summary>Cautions that were acknowledged.</summary>
    public IReadOnlyList<ConfirmedStep> Confirmed { get; init; } = [];

    public string? Note { get; init; }
}
