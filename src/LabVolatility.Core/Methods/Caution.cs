namespace LabVolatility.Core.Methods;

/// <summary>A caution at the step where it matters. It reminds; it does not make the work safe.</summary>
/// <param name="Code">Its number in the list of cautions.</param>
/// <param name="Signal">"DANGER", "WARNING", "CAUTION" or "NOTICE".</param>
/// <param name="Text">What can happen and what to do, at most 25 words.</param>
/// <param name="Gate">What it asks before the work goes on.</param>
public sealed record Caution(string Code, string Signal, string Text, CautionGate Gate);
