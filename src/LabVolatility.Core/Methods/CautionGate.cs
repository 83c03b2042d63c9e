namespace LabVolatility.Core.Methods;

/// <summary>What a caution asks before the work goes on.</summary>
public enum CautionGate
{
    /// <summary>A value must be typed and fit; there is no button instead.</summary>
    Hard,

    /// <summary>One deliberate confirmation, with name and time.</summary>
    Acknowledge,

    /// <summary>To be read.</summary>
    Show,
}
