using LabVolatility.Core.Methods;

namespace LabVolatility.Laboratory.Samples;

/// <summary>A container as registered.</summary>
public sealed record ContainerRequest(
    ContainerKind Kind,
    decimal VolumeMillilitres,
    decimal? FillPercent = null,
    string? Temperature = null,
    string? Seal = null,
    bool? SealIntact = null,
    bool Leaking = false,
    string? Condition = null);
