using LabVolatility.Laboratory.Certificates;

namespace LabVolatility.Laboratory.Batches;

/// <summary>A batch with all that its page shows.</summary>
/// <param name="Batch">As registered and changed.</param>
/// <param name="Assessed">As it stands now: evidence, decisions, marks.</param>
/// <param name="Certificates">The latest revision first.</param>
/// <param name="Story">What happened, the latest first.</param>
public sealed record BatchSheet(
    Batch Batch, AssessBatch.Assessed Assessed, IReadOnlyList<ReadCertificates.Line> Certificates, IReadOnlyList<BatchEvent> Story)
{
    public Evidence Evidence => Assessed.Evidence;

    /// <summary>The decision in force; null where nobody decided, or it was withdrawn.</summary>
    public DecisionInForce? Standing => Assessed.InForce is { Kind: not DecisionKind.Withdraw } decision ? decision : null;

    /// <summary>A release or concession is in force and no certificate stands for it.</summary>
    public bool LacksCertificate =>
        Standing?.Kind is DecisionKind.Release or DecisionKind.Concession && Certificates is not [{ Superseded: false }, ..];

    /// <summary>What comes next by the grade's tree; null where nothing calls for a step.</summary>
    public RetestAdvice? Next { get; init; }

    /// <summary>Cargo certificates that name the batch, the newest first.</summary>
    public IReadOnlyList<CargoLine> Cargoes { get; init; } = [];

    /// <summary>Hand-over notes, the latest first.</summary>
    public IReadOnlyList<HandoverNote> Handovers { get; init; } = [];
}
