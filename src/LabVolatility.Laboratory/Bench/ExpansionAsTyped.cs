namespace LabVolatility.Laboratory.Bench;

/// <summary>One expansion as typed: the chamber's volume, liquid and vapour, and the pressure at rest.</summary>
public sealed record ExpansionAsTyped(TypedReading Volume, TypedReading Pressure);
