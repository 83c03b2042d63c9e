using LabVolatility.Laboratory.Bench;

namespace LabVolatility.Web.Api.Bench;

/// <summary>A determination as it was reported.</summary>
public sealed record DeterminationAnswer(
    Guid Id, string Sample, string Method, string Edition, IReadOnlyList<ResultAnswer> Results, IReadOnlyList<FindingAnswer> Findings)
{
    public static DeterminationAnswer Of(ReportedDetermination reported) => new(
        reported.Id, reported.Sample, reported.Evaluated.Method.Designation, reported.Evaluated.Method.Edition,
        [.. reported.Evaluated.Results.Select(ResultAnswer.InKilopascals)], [.. reported.Evaluated.Findings.Select(FindingAnswer.Of)]);
}
