using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>The sample as it came to the bench.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Container">What it is kept in.</param>
/// <param name="ContainerVolume">The container's size; null where not stated.</param>
/// <param name="FillPercent">How full the container is, % of its volume; null where not stated.</param>
/// <param name="AirSaturated">Whether it was air-saturated as the method asks; null where not stated.</param>
/// <param name="Hazy">Whether it was hazy at 0 to 1 °C.</param>
/// <param name="Phases">How many liquids were seen, 1 or more.</param>
public sealed record SampleCondition(
    SampleKind Kind,
    ContainerKind Container,
    Volume? ContainerVolume = null,
    decimal? FillPercent = null,
    bool? AirSaturated = null,
    bool Hazy = false,
    int Phases = 1);
