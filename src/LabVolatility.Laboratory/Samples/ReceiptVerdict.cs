namespace LabVolatility.Laboratory.Samples;

/// <summary>What a person decided about a sample that did not come as it should.</summary>
public enum ReceiptVerdict
{
    /// <summary>Condition as expected; nothing to decide.</summary>
    AsExpected,
    ProceedWithDisclaimer,
    Resample,
    Reject,
}
