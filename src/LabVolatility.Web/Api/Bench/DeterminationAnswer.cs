using LabVolatility.Laboratory.Bench;

namespace LabVolatility.Web.Api.Bench;

/// <summary>A determination as it was reported.</summary>
public sealed record DeterminationAnswer(
    Guid Id, string Sample, string Method, string Edition, IReadOnlyList<ResultAnswer> Results, IReadOnlyList<FindingAnswer> Findings)
{
    public static DeterminationAnswer Of(string sample, ReportedDetermination reported) => new(
        reported.Id, sample, reported.Evaluated.Method.Designation, reported.Evaluated.Method.Edition,
        [.. reported.Evaluated.Results.Select(ResultAnswer.Of)], [.. reported.Evaluated.Findings.Select(FindingAnswer.Of)]);
}
