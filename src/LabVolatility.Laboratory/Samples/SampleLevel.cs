namespace LabVolatility.Laboratory.Samples;

/// <summary>Where in the tank or line a sample was drawn.</summary>
public enum SampleLevel
{
    Upper,
    Middle,
    Lower,
    Running,

    /// <summary>Made from level samples in a closed system, without losing light ends.</summary>
    Composite,

    /// <summary>From a line or a single point.</summary>
    Spot,
}
