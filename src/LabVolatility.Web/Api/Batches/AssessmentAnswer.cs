using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Batches;

namespace LabVolatility.Web.Api.Batches;

/// <summary>A batch held against the limits of all its destinations, worked out from what is recorded now.</summary>
/// <param name="Blocks">What stands against a release apart from the limits.</param>
/// <param name="EvidenceHash">SHA-256 of all that the assessment rests on; what a signer signs.</param>
public sealed record AssessmentAnswer(
    string Batch, string Outcome, IReadOnlyList<BatchLimitAnswer> Limits, string? Season, IReadOnlyList<string> Remarks, IReadOnlyList<string> Blocks,
    DecisionAnswer? Decision, IReadOnlyList<string> ReviewMarks, string EvidenceHash)
{
    public static AssessmentAnswer Of(AssessBatch.Assessed assessed)
    {
        var evidence = assessed.Evidence;
        var seasons = evidence.Limits.Select(l => l.Season).OfType<string>().Distinct().ToList();
        return new AssessmentAnswer(
            evidence.Batch, evidence.Outcome.Text(), [.. evidence.Limits.Select(BatchLimitAnswer.Of)], seasons.Count == 0 ? null : string.Join(", ", seasons),
            evidence.Remarks, evidence.Blocks, DecisionAnswer.Of(assessed.InForce), [.. assessed.ReviewMarks.Select(m => m.Cause)], assessed.EvidenceHash);
    }
}
