using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>One of the expansions of a specimen, at constant temperature.</summary>
/// <param name="Volume">The chamber's volume, liquid and vapour together.</param>
/// <param name="Pressure">The total pressure at rest.</param>
public sealed record Expansion(Volume Volume, AbsolutePressure Pressure);
