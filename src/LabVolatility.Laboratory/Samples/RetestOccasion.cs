namespace LabVolatility.Laboratory.Samples;

/// <summary>What calls for a retest or a resample, the most pressing first.</summary>
public enum RetestOccasion
{
    SampleVoid,
    DuplicatesDiffer,
    LevelsDiffer,
    PartyDiffers,
    DoesNotConform,
    NotDecided,
}
