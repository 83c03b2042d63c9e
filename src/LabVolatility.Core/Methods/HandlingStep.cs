namespace LabVolatility.Core.Methods;

/// <summary>A step of sample handling that the method demands and the analyst confirms.</summary>
/// <param name="Code">A short word for the record: "chill", "fill", "air", "haze", "first-test", "inject".</param>
/// <param name="Text">What to do, and the figure to meet.</param>
/// <param name="Source">Where it is laid down.</param>
/// <param name="Status">How well it is known.</param>
public sealed record HandlingStep(string Code, string Text, string Source, FactStatus Status);
