using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Certificates;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.Limits;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Web.Layout;

/// <summary>What a page asks of a notice, in the words of the laboratory.</summary>
public static class NoticeKinds
{
    /// <summary>Samples, their tests and what was measured.</summary>
    public static bool ChangesMeasurements(this Notice notice) =>
        notice.Changes<Sample>() || notice.Changes<AssignedTest>() || notice.Changes<Determination>() || notice.Changes<DeterminationRevision>()
        || notice.Changes<TakenOn>() || notice.Changes<TankMovement>() || notice.Changes<HandBlend>() || notice.Changes<BlendContent>();

    /// <summary>Batches, decisions on them, marks, hand-overs, others' results and certificates.</summary>
    public static bool ChangesBatches(this Notice notice) =>
        notice.Changes<Batch>() || notice.Changes<Decision>() || notice.Changes<ReviewMark>() || notice.Changes<Certificate>() || notice.Changes<Cargo>()
        || notice.Changes<HandoverNote>() || notice.Changes<HandoverTaken>() || notice.Changes<StepTaken>()
        || notice.Changes<PartyResult>() || notice.Changes<PartyWithdrawal>();

    /// <summary>Whether an instrument may be used.</summary>
    public static bool ChangesReadiness(this Notice notice) => notice.Changes<Instrument>() || notice.Changes<Verification>();

    /// <summary>Areas and limits, whether confirmed or the laboratory's own.</summary>
    public static bool ChangesLimits(this Notice notice) =>
        notice.Changes<LaboratoryArea>() || notice.Changes<LaboratoryLimit>() || notice.Changes<FactConfirmation>();

    /// <summary>What every assessment rests on besides its results.</summary>
    public static bool ChangesRules(this Notice notice) =>
        notice.ChangesLimits() || notice.Changes<PrecisionEntry>() || notice.Changes<CorrelationEntry>() || notice.Changes<Grade>();
}
