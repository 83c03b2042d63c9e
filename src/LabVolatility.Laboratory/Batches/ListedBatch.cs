using LabVolatility.Core.Limits;

namespace LabVolatility.Laboratory.Batches;

/// <summary>A batch as a line of a list.</summary>
/// <param name="Batch">The batch.</param>
/// <param name="Outcome">As frozen with the decision in force; worked out now where there is none.</param>
/// <param name="InForce">The decision in force; a withdrawal stays visible; null where nobody decided.</param>
public sealed record ListedBatch(Batch Batch, Outcome Outcome, DecisionInForce? InForce)
{
    /// <summary>True where somebody must decide: nobody did, or the decision was withdrawn.</summary>
    public bool Waits => InForce is null or { Kind: DecisionKind.Withdraw };
}
