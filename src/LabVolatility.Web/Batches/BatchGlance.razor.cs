using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Batches;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>What a tired person needs at once: outcome, decision in force, margin.</summary>
public sealed partial class BatchGlance : ComponentBase
{
    [Parameter, EditorRequired]
    public BatchSheet Sheet { get; set; } = null!;

    private DecisionInForce? InForce => Sheet.Assessed.InForce;

    private LimitEvidence? Binding => BindingLimit.Of(Sheet.Evidence);

    private static bool HasZone(LimitEvidence limit) =>
        limit.AcceptanceMinimum > limit.EffectiveMinimum || limit.AcceptanceMaximum < limit.EffectiveMaximum;

    private static string Conforming(Evidence evidence)
    {
        var met = evidence.Limits.Count(l => l.Outcome == Outcome.Conforms);
        var unanswered = evidence.Limits.Count(l => !l.Required && l.Outcome == Outcome.Incomplete);
        return $"Every required limit is met, {met} in all."
            + (unanswered == 0 ? "" : $" {unanswered} that {(unanswered == 1 ? "is" : "are")} not required here {(unanswered == 1 ? "has" : "have")} no result.");
    }

    private string Why
    {
        get
        {
            var evidence = Sheet.Evidence;
            var reasons = evidence.Limits.Where(l => l.Outcome == evidence.Outcome && (l.Required || l.Outcome != Outcome.Incomplete))
                .Select(l => l.OutcomeWhy).Distinct().ToList();
            return evidence.Outcome switch
            {
                Outcome.Conforms => Conforming(evidence),
                Outcome.NoLimit => "No limit is in force where and when it will be used.",
                _ when reasons.Count > 0 => string.Join(" ", reasons.Take(2)),
                _ => evidence.Remarks is [var remark, ..] ? remark : "A result that a limit asks for is missing.",
            };
        }
    }
}
