using LabVolatility.Laboratory.Batches;

namespace LabVolatility.Laboratory.Today;

/// <summary>A batch that waits for a decision.</summary>
/// <param name="Batch">The batch.</param>
/// <param name="Evidence">As it stands now.</param>
/// <param name="InForce">A hold or a withdrawal; null where nobody decided.</param>
/// <param name="LastResultDue">When the last test that waits is due; null where none waits.</param>
/// <param name="SealedLeft">Sealed containers of its samples that are still here, the retained portion among them.</param>
public sealed record WaitingBatch(Batch Batch, Evidence Evidence, DecisionInForce? InForce, DateTimeOffset? LastResultDue, int SealedLeft)
{
    /// <summary>The limit that binds; null where nothing was measured.</summary>
    public LimitEvidence? Binding => BindingLimit.Of(Evidence);
}
