namespace LabVolatility.Laboratory.Samples;

public enum TestState
{
    Waiting,
    Reported,
    Cancelled,
}
