using LabVolatility.Core.Methods;

namespace LabVolatility.Laboratory.Bench;

/// <summary>What a determination's readings give under each authority asked for.</summary>
public sealed record EvaluatedDetermination(
    TestMethod Method, IReadOnlyList<ReportedResult> Results, IReadOnlyList<Finding> Findings)
{
    public bool MayReport => Results.Count > 0 && Findings.All(f => f.Severity != FindingSeverity.Blocking);

    public IEnumerable<Finding> Blocking => Findings.Where(f => f.Severity == FindingSeverity.Blocking);
}
