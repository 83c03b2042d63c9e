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

    private string Why
    {
        get
        {
            var evidence = Sheet.Evidence;
            var reasons = evidence.Limits.Where(l => l.Outcome == evidence.Outcome && (l.Required || l.Outcome != Outcome.Incomplete))
                .Select(l => l.OutcomeWhy).Distinct().ToList();
            return evidence.Outcome switch
            {
                Outcome.Conforms => $"Every limit that applies is met: {evidence.Limits.Count(l => l.Outcome == Outcome.Conforms)} of {evidence.Limits.Count}.",
                Outcome.NoLimit => "No limit is in force where and when it will be used.",
                _ when reasons.Count > 0 => string.Join(" ", reasons.Take(2)),
                _ => evidence.Remarks is [var remark, ..] ? remark : "A result that a limit asks for is missing.",
            };
        }
    }
}
