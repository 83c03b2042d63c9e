namespace LabVolatility.Core.Limits;

/// <summary>How a result is held against a limit.</summary>
public enum DecisionRule
{
    /// <summary>The result itself is compared.</summary>
    Simple,

    /// <summary>The result is compared with edges moved by its uncertainty.</summary>
    Guarded,
}
