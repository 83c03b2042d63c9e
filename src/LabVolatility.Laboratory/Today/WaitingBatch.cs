using LabVolatility.Laboratory.Batches;

namespace LabVolatility.Laboratory.Today;

/// <summary>A batch that waits for a decision.</summary>
/// <param name="Batch">The batch.</param>
/// <param name="Evidence">As it stands now.</param>
/// <param name="InForce">A hold or a withdrawal; null where nobody decided.</param>
/// <param name="SealedLeft">Sealed containers of its samples that are still here, the retained portion among them.</param>
public sealed record WaitingBatch(Batch Batch, Evidence Evidence, DecisionInForce? InForce, int SealedLeft)
{
    /// <summary>When the last test that waits is due; null where none waits.</summary>
    public DateTimeOffset? LastResultDue { get; init; }

    /// <summary>When the last result is to be expected by what the methods usually take here; null where none waits or too little is known.</summary>
    public DateTimeOffset? LastResultExpected { get; init; }

    /// <summary>The limit that binds; null where nothing was measured.</summary>
    public LimitEvidence? Binding => BindingLimit.Of(Evidence);
}
