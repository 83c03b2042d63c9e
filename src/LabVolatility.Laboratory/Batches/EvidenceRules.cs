using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Batches;

/// <summary>What the evidence must show before a release or a concession is signed.</summary>
public static class EvidenceRules
{
    public const string FrozenEvidence = "evidence-is-what-the-signer-saw";
    public const string ReleaseConforms = "a-release-conforms";
    public const string ConcessionNotLegal = "no-concession-against-a-legal-limit";
    public const string NothingWaits = "nothing-waits";

    public static IReadOnlyList<Problem> Check(Evidence evidence, DecisionRequest request, Actor actor)
    {
        var problems = new List<Problem>();
        if (EvidenceText.Hash(EvidenceText.Of(evidence)) != request.EvidenceHash)
            problems.Add(new Problem("", "Results, limits or checks changed since you looked: look at the batch again, then sign.", FrozenEvidence));
        if (request.Kind is not (DecisionKind.Release or DecisionKind.Concession))
            return request.Kind == DecisionKind.Withdraw ? [] : problems;

        if (SecondPersonSigns.Check(Hands(evidence), actor.Id) is { } own)
            problems.Add(own);
        problems.AddRange(evidence.Blocks.Select(b => new Problem("", b, NothingWaits)));
        if (request.Kind == DecisionKind.Release && evidence.Outcome is not (Outcome.Conforms or Outcome.NoLimit))
            problems.Add(new Problem("", $"The batch {OutcomeWords.Text(evidence.Outcome)}: it can't be released. Hold it, get more results as agreed, or ask for a concession where no legal limit is concerned.", ReleaseConforms));
        if (request.Kind == DecisionKind.Concession)
            problems.AddRange(ConcessionProblems(evidence));
        return problems;
    }

    /// <summary>Everybody who measured, took on or amended a result of the batch, counted or not.</summary>
    public static IReadOnlySet<Guid> Hands(Evidence evidence) =>
        evidence.Samples.SelectMany(s => s.Determinations).SelectMany(d => d.Hands).ToHashSet();

    private static IEnumerable<Problem> ConcessionProblems(Evidence evidence)
    {
        if (evidence.FailsLegalLimit)
            yield return new Problem("", "A legal limit is not shown to be met: no concession can be made against it.", ConcessionNotLegal);
        else if (evidence.Outcome is Outcome.Conforms or Outcome.NoLimit)
            yield return new Problem("/kind", "The batch conforms: release it, a concession isn't needed.", ReleaseConforms);
        else if (evidence.Outcome == Outcome.Incomplete)
            yield return new Problem("", "A required result is missing: a concession is made on results.", ReleaseConforms);
    }
}
