namespace LabVolatility.Laboratory.People;

/// <summary>What a person may do; the rows of the table of rights.</summary>
public enum Right
{
    RegisterSamples,
    Determine,
    AmendBeforeDecision,
    AmendAfterDecision,
    Decide,
    GrantConcession,
    Withdraw,
    ManageBatches,
    CheckInstruments,
    PutInstrumentBack,
    ManageReferenceData,
    Administer,
    Read,
    Export,
    CheckRecords,
}
