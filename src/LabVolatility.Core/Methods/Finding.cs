namespace LabVolatility.Core.Methods;

/// <summary>Something about a determination that the method remarks or rejects.</summary>
/// <param name="Code">A word of <see cref="FindingCodes"/>.</param>
/// <param name="Severity">Warning, or blocking.</param>
/// <param name="Message">What, why, and what to do.</param>
public sealed record Finding(string Code, FindingSeverity Severity, string Message);
