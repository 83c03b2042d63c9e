namespace LabVolatility.Laboratory.Bench;

/// <summary>A reading: the text as typed, and the number and unit it was understood as.</summary>
/// <param name="Typed">Exactly what was typed or sent.</param>
/// <param name="Value">The number, exact.</param>
/// <param name="Unit">The unit's symbol as in the machine interface.</param>
public sealed record TypedReading(string Typed, decimal Value, string Unit);
