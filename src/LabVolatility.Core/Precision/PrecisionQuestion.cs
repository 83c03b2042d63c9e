using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Precision;

/// <summary>What r and R are asked for.</summary>
/// <param name="Method">The method's designation.</param>
/// <param name="Edition">The edition that the determination was made by.</param>
/// <param name="Quantity">The reported quantity.</param>
/// <param name="Container">The container.</param>
/// <param name="ContainerVolume">Its size; null where not stated.</param>
/// <param name="Level">The reported value.</param>
public sealed record PrecisionQuestion(
    string Method,
    string Edition,
    string Quantity,
    ContainerKind Container,
    Volume? ContainerVolume,
    AbsolutePressure Level);
