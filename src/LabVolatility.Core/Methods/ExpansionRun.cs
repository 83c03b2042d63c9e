using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>The expansions of one specimen, with all that turns them into a gas part.</summary>
/// <param name="Expansions">In the order they were made, the chamber growing.</param>
/// <param name="LiquidVolume">The specimen's volume; null: not known, and no solubility then.</param>
/// <param name="Introduction">The temperature of the expansions.</param>
/// <param name="Test">The temperature at which the total pressure is read afterwards.</param>
public sealed record ExpansionRun(
    IReadOnlyList<Expansion> Expansions, Volume? LiquidVolume, Temperature Introduction, Temperature Test);
