namespace LabVolatility.Core.Methods;

/// <summary>What a method makes of one determination.</summary>
/// <param name="Method">The method, with its edition.</param>
/// <param name="Results">What it reports: the reading first, then the correlated quantity.</param>
/// <param name="Findings">What it remarks or rejects; a blocking one forbids reporting.</param>
/// <param name="Repeatability">r in the report unit; null where not set or void.</param>
/// <param name="Reproducibility">R in the report unit; null where not set or void.</param>
public sealed record MethodOutcome(
    TestMethod Method,
    IReadOnlyList<ReportedResult> Results,
    IReadOnlyList<Finding> Findings,
    decimal? Repeatability,
    decimal? Reproducibility)
{
    /// <summary>Whether no finding forbids reporting, and there is something to report.</summary>
    public bool MayReport => Results.Count > 0 && Findings.All(f => f.Severity != FindingSeverity.Blocking);
}
