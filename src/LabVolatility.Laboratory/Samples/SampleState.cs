namespace LabVolatility.Laboratory.Samples;

public enum SampleState
{
    Announced,
    Received,

    /// <summary>Not fit for testing: resample was decided at receipt.</summary>
    Refused,
}
